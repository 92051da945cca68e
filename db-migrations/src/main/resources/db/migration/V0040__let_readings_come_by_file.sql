ALTER TABLE readings DROP CONSTRAINT readings_channel_check;
ALTER TABLE readings ADD CONSTRAINT readings_channel_check
    CHECK (channel IN ('page', 'api', 'batch', 'card', 'file', 'probe'));
ALTER TABLE readings ADD COLUMN file_id int;
ALTER TABLE readings ADD COLUMN superseded_by_file int;
ALTER TABLE readings ADD CONSTRAINT readings_file_fk FOREIGN KEY (chapter_id, file_id)
    REFERENCES logger_files (chapter_id, file_id);
ALTER TABLE readings ADD CONSTRAINT readings_superseded_by_file_fk FOREIGN KEY (chapter_id, superseded_by_file)
    REFERENCES logger_files (chapter_id, file_id);

-- Serves taking a file back.
CREATE INDEX readings_file_idx ON readings (chapter_id, file_id) WHERE file_id IS NOT NULL;
CREATE INDEX readings_superseded_by_file_idx ON readings (chapter_id, superseded_by_file)
    WHERE superseded_by_file IS NOT NULL;
-- Serves the question what a device has said before, also of readings that were corrected since.
CREATE INDEX readings_superseded_idx ON readings (chapter_id, tank_id, measured_at) WHERE superseded_at IS NOT NULL;

GRANT UPDATE (superseded_by_file) ON readings TO tankrounds_app;

COMMENT ON COLUMN readings.channel IS
    'page (the form), card (the form, by a class with its card), file (of a logger), probe (SenML), api or batch.';
COMMENT ON COLUMN readings.file_id IS 'The logger file that it came with, corrections included; NULL otherwise.';
COMMENT ON COLUMN readings.superseded_by_file IS
    'The logger file whose value somebody chose over this one; NULL otherwise.';
