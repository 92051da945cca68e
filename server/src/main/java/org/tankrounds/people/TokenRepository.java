package org.tankrounds.people;

import static org.tankrounds.db.schema.Tables.TANKS;
import static org.tankrounds.db.schema.Tables.TOKENS;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.web.Secrets;

/** Bearer tokens. The token is told once, when it is issued; what is kept is its hash. */
public final class TokenRepository {
    static final String PREFIX = "tkr_";

    /** A new token: the only time that its secret is known. */
    public record Issued(int tokenId, String secret) {}

    /** @param tankId empty for every tank of the chapter and the rounds */
    public Issued issue(DSLContext tx, int chapterId, OptionalInt tankId, String label, Instant now) {
        String secret = PREFIX + Secrets.next();
        int tokenId = tx.insertInto(TOKENS)
                .set(TOKENS.CHAPTER_ID, chapterId)
                .set(TOKENS.TOKEN_HASH, Secrets.sha256(secret))
                .set(TOKENS.TANK_ID, tankId.isPresent() ? tankId.getAsInt() : null)
                .set(TOKENS.LABEL, label)
                .set(TOKENS.CREATED_AT, now)
                .returning(TOKENS.TOKEN_ID)
                .fetchSingle(TOKENS.TOKEN_ID);
        return new Issued(tokenId, secret);
    }

    /** Newest first. */
    public List<Token> list(DSLContext tx, int chapterId) {
        return tx.select(TOKENS.asterisk()).select(TANKS.CODE)
                .from(TOKENS)
                .leftJoin(TANKS).on(TANKS.CHAPTER_ID.eq(TOKENS.CHAPTER_ID).and(TANKS.TANK_ID.eq(TOKENS.TANK_ID)))
                .where(TOKENS.CHAPTER_ID.eq(chapterId))
                .orderBy(TOKENS.TOKEN_ID.desc())
                .fetch(TokenRepository::token);
    }

    /** @return false when there is no such token or it was revoked before */
    public boolean revoke(DSLContext tx, int chapterId, int tokenId, Instant now) {
        return tx.update(TOKENS)
                .set(TOKENS.REVOKED_AT, now)
                .where(TOKENS.CHAPTER_ID.eq(chapterId)).and(TOKENS.TOKEN_ID.eq(tokenId))
                .and(TOKENS.REVOKED_AT.isNull())
                .execute() == 1;
    }

    private static Token token(Record row) {
        return new Token(
                row.get(TOKENS.TOKEN_ID),
                Optional.ofNullable(row.get(TANKS.CODE)),
                row.get(TOKENS.LABEL),
                row.get(TOKENS.CREATED_AT),
                Optional.ofNullable(row.get(TOKENS.LAST_USED_AT)),
                Optional.ofNullable(row.get(TOKENS.REVOKED_AT)));
    }
}
