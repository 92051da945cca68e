CREATE TABLE summary_versions (
    chapter_id    int         NOT NULL,
    season_id     int         NOT NULL,
    version       int         NOT NULL,
    submission_id uuid        NOT NULL,
    frozen_at     timestamptz NOT NULL,
    frozen_by     int         NOT NULL,
    software      text        NOT NULL,
    CONSTRAINT summary_versions_pk PRIMARY KEY (chapter_id, season_id, version),
    CONSTRAINT summary_versions_submission_key UNIQUE (chapter_id, season_id, submission_id),
    CONSTRAINT summary_versions_season_fk FOREIGN KEY (chapter_id, season_id) REFERENCES seasons (chapter_id, season_id),
    CONSTRAINT summary_versions_frozen_by_fk FOREIGN KEY (chapter_id, frozen_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT summary_versions_version_check CHECK (version >= 1),
    CONSTRAINT summary_versions_software_check CHECK (length(software) BETWEEN 1 AND 80)
);

CALL wall_in('summary_versions', 'SELECT, INSERT');

COMMENT ON TABLE summary_versions IS 'A season''s summary as it was frozen; none is ever changed or taken away.';
COMMENT ON COLUMN summary_versions.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN summary_versions.season_id IS 'The season.';
COMMENT ON COLUMN summary_versions.version IS 'Counts from 1 within the season.';
COMMENT ON COLUMN summary_versions.submission_id IS 'Minted with the form, so that sending it twice freezes once.';
COMMENT ON COLUMN summary_versions.frozen_at IS 'The moment that its files name as their making.';
COMMENT ON COLUMN summary_versions.frozen_by IS 'Who froze it.';
COMMENT ON COLUMN summary_versions.software IS 'Version of the software that made it.';
