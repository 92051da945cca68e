-- A mark of its own for everything that is learned: whoever stores a reading never waits for whoever forecasts.
ALTER TABLE dirty_tanks DROP CONSTRAINT dirty_tanks_pk;
ALTER TABLE dirty_tanks ADD COLUMN mark_id bigint GENERATED ALWAYS AS IDENTITY;
ALTER TABLE dirty_tanks ADD CONSTRAINT dirty_tanks_pk PRIMARY KEY (chapter_id, mark_id);

COMMENT ON COLUMN dirty_tanks.mark_id IS 'Numbers the marks; a tank may have many.';
