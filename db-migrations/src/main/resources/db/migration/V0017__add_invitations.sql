CREATE TABLE invitations (
    chapter_id      int         NOT NULL,
    invitation_hash bytea       NOT NULL,
    person_id       int         NOT NULL,
    created_at      timestamptz NOT NULL,
    expires_at      timestamptz NOT NULL,
    used_at         timestamptz,
    CONSTRAINT invitations_pk PRIMARY KEY (chapter_id, invitation_hash),
    CONSTRAINT invitations_person_fk FOREIGN KEY (chapter_id, person_id) REFERENCES people (chapter_id, person_id)
);

-- Serves the page behind the link, where the chapter is not known yet.
CREATE INDEX invitations_invitation_hash_idx ON invitations (invitation_hash);

CALL wall_in('invitations', 'SELECT, INSERT, UPDATE (used_at)');
CREATE POLICY presented ON invitations FOR SELECT USING (invitation_hash = presented_secret());

COMMENT ON TABLE invitations IS 'One-time links with which a person chooses a password.';
COMMENT ON COLUMN invitations.chapter_id IS 'The person''s chapter.';
COMMENT ON COLUMN invitations.invitation_hash IS 'SHA-256 of the random value in the link.';
COMMENT ON COLUMN invitations.person_id IS 'Whom it is for.';
COMMENT ON COLUMN invitations.created_at IS 'When it was made.';
COMMENT ON COLUMN invitations.expires_at IS 'From then on it opens nothing.';
COMMENT ON COLUMN invitations.used_at IS 'When a password was chosen with it; NULL until then.';
