CREATE TABLE sessions (
    chapter_id   int         NOT NULL,
    session_hash bytea       NOT NULL,
    person_id    int         NOT NULL,
    created_at   timestamptz NOT NULL,
    last_seen_at timestamptz NOT NULL,
    expires_at   timestamptz NOT NULL,
    CONSTRAINT sessions_pk PRIMARY KEY (chapter_id, session_hash),
    CONSTRAINT sessions_person_fk FOREIGN KEY (chapter_id, person_id) REFERENCES people (chapter_id, person_id)
);

-- Serves every request of a signed-in browser, where the chapter is not known yet.
CREATE INDEX sessions_session_hash_idx ON sessions (session_hash);

CALL wall_in('sessions', 'SELECT, INSERT, UPDATE (last_seen_at), DELETE');
CREATE POLICY presented ON sessions FOR SELECT USING (session_hash = presented_secret());

COMMENT ON TABLE sessions IS 'Who is signed in on which browser.';
COMMENT ON COLUMN sessions.chapter_id IS 'The person''s chapter.';
COMMENT ON COLUMN sessions.session_hash IS 'SHA-256 of the random value in the cookie.';
COMMENT ON COLUMN sessions.person_id IS 'Who it is.';
COMMENT ON COLUMN sessions.created_at IS 'When they signed in.';
COMMENT ON COLUMN sessions.last_seen_at IS 'Last request, to the minute; the idle limit counts from here.';
COMMENT ON COLUMN sessions.expires_at IS 'The end, however busy.';
