CREATE TABLE past_seasons (
    chapter_id     int         NOT NULL,
    past_season_id int         GENERATED ALWAYS AS IDENTITY,
    code           text        NOT NULL,
    submission_id  uuid        NOT NULL,
    name           text        NOT NULL,
    ended_on       date        NOT NULL,
    header         text[]      NOT NULL,
    written_by     int         NOT NULL,
    written_at     timestamptz NOT NULL,
    withdrawn_by   int,
    withdrawn_at   timestamptz,
    CONSTRAINT past_seasons_pk PRIMARY KEY (chapter_id, past_season_id),
    CONSTRAINT past_seasons_code_key UNIQUE (chapter_id, code),
    CONSTRAINT past_seasons_submission_key UNIQUE (chapter_id, submission_id),
    CONSTRAINT past_seasons_chapter_fk FOREIGN KEY (chapter_id) REFERENCES chapters (chapter_id),
    CONSTRAINT past_seasons_written_by_fk FOREIGN KEY (chapter_id, written_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT past_seasons_withdrawn_by_fk FOREIGN KEY (chapter_id, withdrawn_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT past_seasons_name_check CHECK (length(name) BETWEEN 1 AND 60),
    CONSTRAINT past_seasons_header_check CHECK (cardinality(header) BETWEEN 2 AND 200)
);

CALL wall_in('past_seasons', 'SELECT, INSERT, UPDATE (withdrawn_by, withdrawn_at)');

COMMENT ON TABLE past_seasons IS 'Counts of a season before the chapter used this service, as its own sheet had them.';
COMMENT ON COLUMN past_seasons.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN past_seasons.past_season_id IS 'Number inside the database.';
COMMENT ON COLUMN past_seasons.code IS 'For addresses.';
COMMENT ON COLUMN past_seasons.submission_id IS 'Minted with the form, so that sending it twice stores it once.';
COMMENT ON COLUMN past_seasons.name IS 'What the chapter calls it.';
COMMENT ON COLUMN past_seasons.ended_on IS 'Its last day, which puts it in order.';
COMMENT ON COLUMN past_seasons.header IS 'The sheet''s column names, as they were.';
COMMENT ON COLUMN past_seasons.written_by IS 'Who put it in.';
COMMENT ON COLUMN past_seasons.written_at IS 'When it was put in.';
COMMENT ON COLUMN past_seasons.withdrawn_by IS 'Who took it back; NULL while it holds.';
COMMENT ON COLUMN past_seasons.withdrawn_at IS 'When it was taken back; NULL while it holds.';

CREATE TABLE past_rows (
    chapter_id     int    NOT NULL,
    past_season_id int    NOT NULL,
    line_no        int    NOT NULL,
    cells          text[] NOT NULL,
    CONSTRAINT past_rows_pk PRIMARY KEY (chapter_id, past_season_id, line_no),
    CONSTRAINT past_rows_season_fk FOREIGN KEY (chapter_id, past_season_id)
        REFERENCES past_seasons (chapter_id, past_season_id),
    CONSTRAINT past_rows_cells_check CHECK (cardinality(cells) BETWEEN 1 AND 200)
);

CALL wall_in('past_rows', 'SELECT, INSERT');

COMMENT ON TABLE past_rows IS 'The lines of such a sheet, as they were.';
COMMENT ON COLUMN past_rows.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN past_rows.past_season_id IS 'The season.';
COMMENT ON COLUMN past_rows.line_no IS 'The line in the sheet; the header is 1.';
COMMENT ON COLUMN past_rows.cells IS 'What stood in it.';
