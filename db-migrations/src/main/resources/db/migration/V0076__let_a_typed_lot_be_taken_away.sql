ALTER TABLE lots
    ADD COLUMN withdrawn_by int,
    ADD COLUMN withdrawn_at timestamptz,
    ADD COLUMN withdrawn_because text,
    ADD CONSTRAINT lots_withdrawn_by_fk FOREIGN KEY (chapter_id, withdrawn_by) REFERENCES people (chapter_id, person_id),
    ADD CONSTRAINT lots_withdrawn_because_check CHECK (length(withdrawn_because) BETWEEN 1 AND 500),
    ADD CONSTRAINT lots_withdrawn_check CHECK (num_nulls(withdrawn_by, withdrawn_at, withdrawn_because) IN (0, 3));

COMMENT ON COLUMN lots.withdrawn_by IS 'Who took it away; NULL while it holds.';
COMMENT ON COLUMN lots.withdrawn_at IS 'When it was taken away as a mistake: it counts nowhere since; NULL while it holds.';
COMMENT ON COLUMN lots.withdrawn_because IS 'Why; NULL while it holds.';
