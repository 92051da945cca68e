CREATE TABLE summary_links (
    chapter_id   int         NOT NULL,
    link_id      int         GENERATED ALWAYS AS IDENTITY,
    link_hash    bytea       NOT NULL,
    season_id    int         NOT NULL,
    version      int         NOT NULL,
    reader       text        NOT NULL,
    made_by      int         NOT NULL,
    made_at      timestamptz NOT NULL,
    expires_at   timestamptz NOT NULL,
    withdrawn_by int,
    withdrawn_at timestamptz,
    CONSTRAINT summary_links_pk PRIMARY KEY (chapter_id, link_id),
    CONSTRAINT summary_links_hash_key UNIQUE (chapter_id, link_hash),
    CONSTRAINT summary_links_version_fk FOREIGN KEY (chapter_id, season_id, version)
        REFERENCES summary_versions (chapter_id, season_id, version),
    CONSTRAINT summary_links_made_by_fk FOREIGN KEY (chapter_id, made_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT summary_links_withdrawn_by_fk FOREIGN KEY (chapter_id, withdrawn_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT summary_links_hash_check CHECK (length(link_hash) = 32),
    CONSTRAINT summary_links_reader_check CHECK (length(reader) BETWEEN 1 AND 80)
);

-- Serves the page behind the link, where the chapter is not known yet.
CREATE INDEX summary_links_hash_idx ON summary_links (link_hash);

CALL wall_in('summary_links', 'SELECT, INSERT, UPDATE (withdrawn_by, withdrawn_at)');
CREATE POLICY presented ON summary_links FOR SELECT USING (link_hash = presented_secret());

COMMENT ON TABLE summary_links IS 'Links by which somebody without an account reads one version of a summary.';
COMMENT ON COLUMN summary_links.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN summary_links.link_id IS 'Number inside the database.';
COMMENT ON COLUMN summary_links.link_hash IS 'SHA-256 of the random value in the link.';
COMMENT ON COLUMN summary_links.season_id IS 'The season.';
COMMENT ON COLUMN summary_links.version IS 'The version that it opens, and no other.';
COMMENT ON COLUMN summary_links.reader IS 'Whom it was made for, such as an agency''s office.';
COMMENT ON COLUMN summary_links.made_by IS 'Who made it.';
COMMENT ON COLUMN summary_links.made_at IS 'When it was made.';
COMMENT ON COLUMN summary_links.expires_at IS 'From then on it opens nothing.';
COMMENT ON COLUMN summary_links.withdrawn_by IS 'Who took it back; NULL while it was not.';
COMMENT ON COLUMN summary_links.withdrawn_at IS 'From then on it opens nothing; NULL while it was not taken back.';
