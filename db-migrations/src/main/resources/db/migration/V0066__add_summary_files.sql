CREATE TABLE summary_files (
    chapter_id int   NOT NULL,
    season_id  int   NOT NULL,
    version    int   NOT NULL,
    name       text  NOT NULL,
    sha256     bytea NOT NULL,
    content    bytea NOT NULL,
    CONSTRAINT summary_files_pk PRIMARY KEY (chapter_id, season_id, version, name),
    CONSTRAINT summary_files_version_fk FOREIGN KEY (chapter_id, season_id, version)
        REFERENCES summary_versions (chapter_id, season_id, version),
    CONSTRAINT summary_files_name_check CHECK (length(name) BETWEEN 1 AND 20),
    CONSTRAINT summary_files_sha256_check CHECK (length(sha256) = 32)
);

-- Compressed by what made them, or small: trying again costs time and gains nothing.
ALTER TABLE summary_files ALTER COLUMN content SET STORAGE EXTERNAL;

CALL wall_in('summary_files', 'SELECT, INSERT');

COMMENT ON TABLE summary_files IS 'The files of a frozen summary, byte for byte.';
COMMENT ON COLUMN summary_files.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN summary_files.season_id IS 'The season.';
COMMENT ON COLUMN summary_files.version IS 'The version.';
COMMENT ON COLUMN summary_files.name IS 'The ending of its name; of what is printed in several languages with the language behind it.';
COMMENT ON COLUMN summary_files.sha256 IS 'SHA-256 of the content.';
COMMENT ON COLUMN summary_files.content IS 'What is handed out.';
