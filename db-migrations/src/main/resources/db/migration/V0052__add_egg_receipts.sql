CREATE TABLE egg_receipts (
    chapter_id    int         NOT NULL,
    receipt_id    int         GENERATED ALWAYS AS IDENTITY,
    stop_id       int         NOT NULL,
    submission_id uuid        NOT NULL,
    received_at   timestamptz NOT NULL,
    eggs          int         NOT NULL,
    dead          int,
    method        text        NOT NULL,
    spread        int         NOT NULL,
    class_label   text        NOT NULL,
    adult         text        NOT NULL,
    note          text,
    lot_id        int,
    reading_code  text,
    written_by    int         NOT NULL,
    written_at    timestamptz NOT NULL,
    withdrawn_by  int,
    withdrawn_at  timestamptz,
    CONSTRAINT egg_receipts_pk PRIMARY KEY (chapter_id, receipt_id),
    CONSTRAINT egg_receipts_submission_key UNIQUE (chapter_id, stop_id, submission_id),
    CONSTRAINT egg_receipts_stop_fk FOREIGN KEY (chapter_id, stop_id) REFERENCES egg_stops (chapter_id, stop_id),
    CONSTRAINT egg_receipts_lot_fk FOREIGN KEY (chapter_id, lot_id) REFERENCES lots (chapter_id, lot_id),
    CONSTRAINT egg_receipts_written_by_fk FOREIGN KEY (chapter_id, written_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT egg_receipts_withdrawn_by_fk FOREIGN KEY (chapter_id, withdrawn_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT egg_receipts_eggs_check CHECK (eggs BETWEEN 1 AND 100000),
    CONSTRAINT egg_receipts_dead_check CHECK (dead BETWEEN 0 AND eggs),
    CONSTRAINT egg_receipts_method_check CHECK (method IN ('one_by_one', 'weighed', 'by_volume', 'guessed')),
    CONSTRAINT egg_receipts_spread_check CHECK (spread BETWEEN 0 AND 100000),
    CONSTRAINT egg_receipts_class_label_check CHECK (length(class_label) BETWEEN 1 AND 60),
    CONSTRAINT egg_receipts_adult_check CHECK (length(adult) BETWEEN 1 AND 20),
    CONSTRAINT egg_receipts_note_check CHECK (length(note) BETWEEN 1 AND 500),
    CONSTRAINT egg_receipts_lot_check CHECK ((lot_id IS NULL) = (withdrawn_at IS NOT NULL))
);

CREATE UNIQUE INDEX egg_receipts_standing_key ON egg_receipts (chapter_id, stop_id) WHERE withdrawn_at IS NULL;

CALL wall_in('egg_receipts', 'SELECT, INSERT, UPDATE (lot_id, withdrawn_by, withdrawn_at)');

COMMENT ON TABLE egg_receipts IS 'What a class received at a stop, and the lot that its count begins with.';
COMMENT ON COLUMN egg_receipts.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN egg_receipts.receipt_id IS 'Number inside the database.';
COMMENT ON COLUMN egg_receipts.stop_id IS 'The stop; one receipt of it holds at a time.';
COMMENT ON COLUMN egg_receipts.submission_id IS 'Minted with the form, so that sending it twice stores it once.';
COMMENT ON COLUMN egg_receipts.received_at IS 'When the eggs went into the tank.';
COMMENT ON COLUMN egg_receipts.eggs IS 'Eggs handed over, the dead among them included.';
COMMENT ON COLUMN egg_receipts.dead IS 'Of these, dead on arrival and picked out; NULL where nobody looked.';
COMMENT ON COLUMN egg_receipts.method IS 'How they were counted.';
COMMENT ON COLUMN egg_receipts.spread IS 'Eggs more or less that 19 of 20 such counts stay within.';
COMMENT ON COLUMN egg_receipts.class_label IS 'The class that signs, such as "Room 12, period 3": never a pupil.';
COMMENT ON COLUMN egg_receipts.adult IS 'By duty, the adult who was there.';
COMMENT ON COLUMN egg_receipts.note IS 'Anything else; NULL for nothing.';
COMMENT ON COLUMN egg_receipts.lot_id IS 'The lot that it made; NULL once it was taken back, which takes the lot away too.';
COMMENT ON COLUMN egg_receipts.reading_code IS 'The reading with the dead and the tank''s water; NULL where there was nothing to read.';
COMMENT ON COLUMN egg_receipts.written_by IS 'Who wrote it down.';
COMMENT ON COLUMN egg_receipts.written_at IS 'When it was written down.';
COMMENT ON COLUMN egg_receipts.withdrawn_by IS 'Who took it back; NULL while it holds.';
COMMENT ON COLUMN egg_receipts.withdrawn_at IS 'When it was taken back as a mistake; NULL while it holds.';
