CREATE TABLE count_entries (
    chapter_id    int         NOT NULL,
    entry_id      int         GENERATED ALWAYS AS IDENTITY,
    season_id     int         NOT NULL,
    tank_id       int         NOT NULL,
    to_tank_id    int,
    submission_id uuid        NOT NULL,
    kind          text        NOT NULL,
    happened_at   timestamptz NOT NULL,
    fish          int         NOT NULL,
    method        text        NOT NULL,
    spread        int         NOT NULL,
    place         text,
    approval      text,
    note          text,
    written_by    int         NOT NULL,
    written_at    timestamptz NOT NULL,
    withdrawn_by  int,
    withdrawn_at  timestamptz,
    CONSTRAINT count_entries_pk PRIMARY KEY (chapter_id, entry_id),
    CONSTRAINT count_entries_submission_key UNIQUE (chapter_id, tank_id, submission_id),
    CONSTRAINT count_entries_season_fk FOREIGN KEY (chapter_id, season_id) REFERENCES seasons (chapter_id, season_id),
    CONSTRAINT count_entries_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT count_entries_to_tank_fk FOREIGN KEY (chapter_id, to_tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT count_entries_written_by_fk FOREIGN KEY (chapter_id, written_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT count_entries_withdrawn_by_fk FOREIGN KEY (chapter_id, withdrawn_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT count_entries_kind_check CHECK (kind IN ('moved', 'thinned', 'released', 'counted', 'hatched')),
    CONSTRAINT count_entries_to_tank_check CHECK ((kind = 'moved') = (to_tank_id IS NOT NULL) AND to_tank_id <> tank_id),
    CONSTRAINT count_entries_fish_check CHECK (fish BETWEEN 0 AND 100000 AND (fish > 0 OR kind IN ('counted', 'hatched'))),
    CONSTRAINT count_entries_method_check CHECK (method IN ('one_by_one', 'weighed', 'by_volume', 'guessed')),
    CONSTRAINT count_entries_spread_check CHECK (spread BETWEEN 0 AND 100000),
    CONSTRAINT count_entries_place_check CHECK (length(place) BETWEEN 1 AND 120),
    CONSTRAINT count_entries_approval_check CHECK (length(approval) BETWEEN 1 AND 80),
    CONSTRAINT count_entries_note_check CHECK (length(note) BETWEEN 1 AND 500)
);

CREATE INDEX count_entries_tank_idx ON count_entries (chapter_id, season_id, tank_id) WHERE withdrawn_at IS NULL;
CREATE INDEX count_entries_to_tank_idx ON count_entries (chapter_id, season_id, to_tank_id) WHERE withdrawn_at IS NULL;

CALL wall_in('count_entries', 'SELECT, INSERT, UPDATE (withdrawn_by, withdrawn_at)');

COMMENT ON TABLE count_entries IS 'What was written down of the number of fish in a tank, beside eggs that came and deaths that were read.';
COMMENT ON COLUMN count_entries.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN count_entries.entry_id IS 'Number inside the database.';
COMMENT ON COLUMN count_entries.season_id IS 'The season.';
COMMENT ON COLUMN count_entries.tank_id IS 'The tank that was counted, or that the fish left.';
COMMENT ON COLUMN count_entries.to_tank_id IS 'The tank that moved fish went to; NULL for all else.';
COMMENT ON COLUMN count_entries.submission_id IS 'Minted with the form, so that sending it twice stores it once.';
COMMENT ON COLUMN count_entries.kind IS 'moved, thinned, released, counted or hatched.';
COMMENT ON COLUMN count_entries.happened_at IS 'When it was done.';
COMMENT ON COLUMN count_entries.fish IS 'How many.';
COMMENT ON COLUMN count_entries.method IS 'How they were counted.';
COMMENT ON COLUMN count_entries.spread IS 'Fish more or less that 19 of 20 such counts stay within.';
COMMENT ON COLUMN count_entries.place IS 'Where fish that left went; NULL where not written down.';
COMMENT ON COLUMN count_entries.approval IS 'Number of the permit or approval by which they left; NULL where not written down.';
COMMENT ON COLUMN count_entries.note IS 'Anything else; NULL for nothing.';
COMMENT ON COLUMN count_entries.written_by IS 'Who wrote it down.';
COMMENT ON COLUMN count_entries.written_at IS 'When it was written down.';
COMMENT ON COLUMN count_entries.withdrawn_by IS 'Who took it back; NULL while it holds.';
COMMENT ON COLUMN count_entries.withdrawn_at IS 'When it was taken back as a mistake; NULL while it holds.';
