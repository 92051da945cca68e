ALTER TABLE readings DROP CONSTRAINT readings_channel_check;
ALTER TABLE readings ADD CONSTRAINT readings_channel_check CHECK (channel IN ('page', 'api', 'batch', 'card'));
ALTER TABLE readings ADD COLUMN card_id int;
ALTER TABLE readings ADD CONSTRAINT readings_card_fk FOREIGN KEY (chapter_id, card_id)
    REFERENCES class_cards (chapter_id, card_id);

COMMENT ON COLUMN readings.channel IS 'page (the form), card (the form, by a class with its card), api or batch.';
COMMENT ON COLUMN readings.person_id IS 'Who was signed in; NULL where a token or a class card posted it.';
COMMENT ON COLUMN readings.card_id IS 'The class card that posted it; NULL otherwise.';
