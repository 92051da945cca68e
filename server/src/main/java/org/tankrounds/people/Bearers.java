package org.tankrounds.people;

import static org.tankrounds.db.schema.Tables.CHAPTERS;
import static org.tankrounds.db.schema.Tables.TOKENS;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.db.Transactions;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Role;
import org.tankrounds.web.Secrets;

/** From a presented bearer token to the caller that it stands for. */
public final class Bearers {
    private static final Duration USED_EVERY = Duration.ofMinutes(1);

    private final Transactions transactions;
    private final Clock clock;

    public Bearers(Transactions transactions, Clock clock) {
        this.transactions = transactions;
        this.clock = clock;
    }

    Optional<Caller> find(String secret) {
        if (!secret.startsWith(TokenRepository.PREFIX)) {
            return Optional.empty();
        }
        byte[] hash = Secrets.sha256(secret);
        return transactions.bySecret(hash, tx -> {
            Record token = tx.selectFrom(TOKENS)
                    .where(TOKENS.TOKEN_HASH.eq(hash)).and(TOKENS.REVOKED_AT.isNull())
                    .fetchOne();
            if (token == null) {
                return Optional.empty();
            }
            Transactions.enter(tx, token.get(TOKENS.CHAPTER_ID));
            noteUse(tx, token);
            return Optional.of(caller(tx, token));
        });
    }

    private void noteUse(DSLContext tx, Record token) {
        Instant now = clock.instant();
        Instant last = token.get(TOKENS.LAST_USED_AT);
        if (last == null || !now.isBefore(last.plus(USED_EVERY))) {
            tx.update(TOKENS)
                    .set(TOKENS.LAST_USED_AT, now)
                    .where(TOKENS.CHAPTER_ID.eq(token.get(TOKENS.CHAPTER_ID)))
                    .and(TOKENS.TOKEN_ID.eq(token.get(TOKENS.TOKEN_ID)))
                    .execute();
        }
    }

    private static Caller caller(DSLContext tx, Record token) {
        Record chapter = tx.selectFrom(CHAPTERS)
                .where(CHAPTERS.CHAPTER_ID.eq(token.get(TOKENS.CHAPTER_ID)))
                .fetchSingle();
        Integer tankId = token.get(TOKENS.TANK_ID);
        return new Caller(
                tankId == null ? Role.CHAPTER_TOKEN : Role.TANK_TOKEN,
                token.get(TOKENS.CHAPTER_ID),
                OptionalInt.empty(),
                tankId == null ? OptionalInt.empty() : OptionalInt.of(tankId),
                "",
                token.get(TOKENS.LABEL),
                chapter.get(CHAPTERS.NAME),
                ZoneId.of(chapter.get(CHAPTERS.TIME_ZONE)),
                "");
    }
}
