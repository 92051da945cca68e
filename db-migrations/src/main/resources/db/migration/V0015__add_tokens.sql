CREATE TABLE tokens (
    chapter_id   int         NOT NULL,
    token_id     int         GENERATED ALWAYS AS IDENTITY,
    token_hash   bytea       NOT NULL,
    tank_id      int,
    label        text        NOT NULL,
    created_at   timestamptz NOT NULL DEFAULT now(),
    last_used_at timestamptz,
    revoked_at   timestamptz,
    CONSTRAINT tokens_pk PRIMARY KEY (chapter_id, token_id),
    CONSTRAINT tokens_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT tokens_chapter_fk FOREIGN KEY (chapter_id) REFERENCES chapters (chapter_id)
);

-- Serves every call of the API, where the chapter is not known yet.
CREATE INDEX tokens_token_hash_idx ON tokens (token_hash);

CALL wall_in('tokens', 'SELECT, INSERT, UPDATE (last_used_at, revoked_at)');
CREATE POLICY presented ON tokens FOR SELECT USING (token_hash = presented_secret());

COMMENT ON TABLE tokens IS 'Bearer tokens of scripts and probes; the token itself is shown once and not kept.';
COMMENT ON COLUMN tokens.chapter_id IS 'The chapter it opens.';
COMMENT ON COLUMN tokens.token_id IS 'Number inside the database, and what token list shows.';
COMMENT ON COLUMN tokens.token_hash IS 'SHA-256 of the token.';
COMMENT ON COLUMN tokens.tank_id IS 'The one tank it opens; NULL for every tank of the chapter and the rounds.';
COMMENT ON COLUMN tokens.label IS 'What it is for.';
COMMENT ON COLUMN tokens.created_at IS 'When it was issued.';
COMMENT ON COLUMN tokens.last_used_at IS 'When it was last presented, to the minute; NULL if never.';
COMMENT ON COLUMN tokens.revoked_at IS 'From then on it opens nothing; NULL while it does.';
