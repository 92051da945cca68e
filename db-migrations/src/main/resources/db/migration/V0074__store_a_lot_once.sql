ALTER TABLE lots
    ADD COLUMN submission_id uuid,
    ADD CONSTRAINT lots_submission_key UNIQUE (chapter_id, tank_id, submission_id);

COMMENT ON COLUMN lots.submission_id IS 'Minted with the form, so that sending it twice stores it once; NULL where no form was sent.';
