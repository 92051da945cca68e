-- A class that came with its card has no person.
ALTER TABLE sessions ALTER COLUMN person_id DROP NOT NULL;
ALTER TABLE sessions ADD COLUMN card_id int;
ALTER TABLE sessions ADD CONSTRAINT sessions_card_fk FOREIGN KEY (chapter_id, card_id)
    REFERENCES class_cards (chapter_id, card_id);
ALTER TABLE sessions ADD CONSTRAINT sessions_whose_check CHECK (num_nonnulls(person_id, card_id) = 1);

COMMENT ON COLUMN sessions.person_id IS 'Who it is; NULL for a class that came with its card.';
COMMENT ON COLUMN sessions.card_id IS 'The card that opened it; NULL for a person.';
