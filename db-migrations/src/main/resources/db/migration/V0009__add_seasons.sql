CREATE TABLE seasons (
    chapter_id int         NOT NULL,
    season_id  int         GENERATED ALWAYS AS IDENTITY,
    code       text        NOT NULL,
    name       text        NOT NULL,
    starts_on  date        NOT NULL,
    ends_on    date        NOT NULL,
    created_at timestamptz NOT NULL DEFAULT now(),
    CONSTRAINT seasons_pk PRIMARY KEY (chapter_id, season_id),
    CONSTRAINT seasons_code_key UNIQUE (chapter_id, code),
    CONSTRAINT seasons_name_key UNIQUE (chapter_id, name),
    CONSTRAINT seasons_chapter_fk FOREIGN KEY (chapter_id) REFERENCES chapters (chapter_id),
    CONSTRAINT seasons_ends_on_check CHECK (ends_on > starts_on AND ends_on <= starts_on + 400)
);

CALL wall_in('seasons', 'SELECT, INSERT, UPDATE');

COMMENT ON TABLE seasons IS 'From the egg delivery to the release.';
COMMENT ON COLUMN seasons.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN seasons.season_id IS 'Number inside the database.';
COMMENT ON COLUMN seasons.code IS 'Random public code, for addresses and commands.';
COMMENT ON COLUMN seasons.name IS 'Such as 2026-27.';
COMMENT ON COLUMN seasons.starts_on IS 'First day.';
COMMENT ON COLUMN seasons.ends_on IS 'Last day.';
COMMENT ON COLUMN seasons.created_at IS 'When it was added.';
