CREATE TABLE rounds_versions (
    chapter_id int         NOT NULL,
    version    bigint      NOT NULL,
    changed_at timestamptz NOT NULL,
    CONSTRAINT rounds_versions_pk PRIMARY KEY (chapter_id),
    CONSTRAINT rounds_versions_chapter_fk FOREIGN KEY (chapter_id) REFERENCES chapters (chapter_id)
);

CALL wall_in('rounds_versions', 'SELECT, INSERT, UPDATE');

COMMENT ON TABLE rounds_versions IS 'Counts the changes of a chapter''s rounds, for ETag and 304.';
COMMENT ON COLUMN rounds_versions.chapter_id IS 'The chapter.';
COMMENT ON COLUMN rounds_versions.version IS 'One more with every forecast replaced and every place changed.';
COMMENT ON COLUMN rounds_versions.changed_at IS 'When it last changed.';
