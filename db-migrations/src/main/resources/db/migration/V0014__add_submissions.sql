CREATE TABLE submissions (
    chapter_id      int         NOT NULL,
    tank_id         int         NOT NULL,
    idempotency_key text        NOT NULL,
    fingerprint     bytea       NOT NULL,
    reading_code    text        NOT NULL,
    created_at      timestamptz NOT NULL DEFAULT now(),
    CONSTRAINT submissions_pk PRIMARY KEY (chapter_id, tank_id, idempotency_key),
    CONSTRAINT submissions_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT submissions_idempotency_key_check CHECK (length(idempotency_key) BETWEEN 1 AND 255)
);

CALL wall_in('submissions', 'SELECT, INSERT');

COMMENT ON TABLE submissions IS 'Which key stored which reading, so that a repeated post stores nothing twice.';
COMMENT ON COLUMN submissions.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN submissions.tank_id IS 'The tank posted to; a key is the tank''s own.';
COMMENT ON COLUMN submissions.idempotency_key IS 'As the sender chose it.';
COMMENT ON COLUMN submissions.fingerprint IS 'SHA-256 of what was posted: the same key with another body is refused.';
COMMENT ON COLUMN submissions.reading_code IS 'The reading that it stored.';
COMMENT ON COLUMN submissions.created_at IS 'When it was stored.';
