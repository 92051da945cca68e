package org.tankrounds.people;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.tankrounds.config.CommandException;
import org.tankrounds.db.Pools;
import org.tankrounds.db.Transactions;
import org.tankrounds.migrations.Logins;
import org.tankrounds.migrations.Migrations;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;

/** What the operator does with tokens, in whichever chapter they are. */
public final class OperatorTokens {
    private static final String LINE = "%-6s %-10s %-12s %-30s %-20s %-20s %s";

    private final Transactions transactions;
    private final Clock clock;
    private final TokenRepository tokens = new TokenRepository();
    private final TankRepository tanks = new TankRepository();
    private final ChapterRepository chapters = new ChapterRepository();

    private record Found(int chapterId, int tankId) {}

    private OperatorTokens(Transactions transactions, Clock clock) {
        this.transactions = transactions;
        this.clock = clock;
    }

    /** Opens the database for as long as the work takes. */
    public static <T> T on(Logins logins, Clock clock, Function<OperatorTokens, T> work) {
        Migrations.migrate(logins.owner());
        try (HikariDataSource pool = Pools.open(logins.application(), "tankrounds token")) {
            return work.apply(new OperatorTokens(new Transactions(pool), clock));
        }
    }

    /** @return the new token */
    public String issueForChapter(String chapterCode, String label) {
        return issue(chapter(chapterCode).chapterId(), OptionalInt.empty(), label);
    }

    /** @param chapterCode null where the tank's code says enough */
    public String issueForTank(String tankCode, String chapterCode, String label) {
        List<Integer> where = chapterCode == null
                ? transactions.chapterIds() : List.of(chapter(chapterCode).chapterId());
        List<Found> found = where.stream().flatMap(id -> find(id, tankCode).stream()).toList();
        if (found.isEmpty()) {
            throw CommandException.failed("There is no tank with the code " + tankCode + ".");
        }
        if (found.size() > 1) {
            throw CommandException.wrongCall("Several chapters have a tank " + tankCode + ": name one with --chapter.");
        }
        return issue(found.get(0).chapterId(), OptionalInt.of(found.get(0).tankId()), label);
    }

    /** One line each, below a heading. */
    public List<String> list() {
        List<String> lines = new ArrayList<>();
        lines.add(LINE.formatted("id", "chapter", "opens", "label", "issued", "last used", "revoked"));
        for (int chapterId : transactions.chapterIds()) {
            lines.addAll(transactions.inChapter(chapterId, tx -> {
                String code = chapters.get(tx, chapterId).code();
                return tokens.list(tx, chapterId).stream().map(token -> line(code, token)).toList();
            }));
        }
        return lines;
    }

    public void revoke(int tokenId) {
        boolean revoked = transactions.chapterIds().stream().anyMatch(chapterId -> transactions.inChapter(
                chapterId, tx -> tokens.revoke(tx, chapterId, tokenId, clock.instant())));
        if (!revoked) {
            throw CommandException.failed("There is no token " + tokenId + " that still opens anything.");
        }
    }

    private String issue(int chapterId, OptionalInt tankId, String label) {
        return transactions.inChapter(chapterId,
                tx -> tokens.issue(tx, chapterId, tankId, label, clock.instant())).secret();
    }

    private Optional<Found> find(int chapterId, String tankCode) {
        return transactions.inChapter(chapterId, tx -> tanks.listOfChapter(tx, chapterId).stream()
                .filter(tank -> tank.code().equals(tankCode))
                .map(Tank::tankId).findFirst()).map(tankId -> new Found(chapterId, tankId));
    }

    private Chapter chapter(String code) {
        return chapters.find(transactions, code).orElseThrow(
                () -> CommandException.failed("There is no chapter with the code " + code + "."));
    }

    private static String line(String chapterCode, Token token) {
        return LINE.formatted(token.tokenId(), chapterCode, token.tank().orElse("all tanks"), token.label(),
                token.createdAt(), token.lastUsedAt().map(Object::toString).orElse("never"),
                token.revokedAt().map(Object::toString).orElse("")).stripTrailing();
    }
}
