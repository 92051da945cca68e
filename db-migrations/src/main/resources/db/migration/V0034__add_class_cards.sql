CREATE TABLE class_cards (
    chapter_id   int         NOT NULL,
    card_id      int         GENERATED ALWAYS AS IDENTITY,
    tank_id      int         NOT NULL,
    code_hash    bytea       NOT NULL,
    made_by      int,
    created_at   timestamptz NOT NULL,
    last_used_at timestamptz,
    revoked_at   timestamptz,
    CONSTRAINT class_cards_pk PRIMARY KEY (chapter_id, card_id),
    CONSTRAINT class_cards_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT class_cards_made_by_fk FOREIGN KEY (chapter_id, made_by) REFERENCES people (chapter_id, person_id)
);

-- One card a tank: whoever makes a second at the same moment is told so by the database.
CREATE UNIQUE INDEX class_cards_in_use_key ON class_cards (chapter_id, tank_id) WHERE revoked_at IS NULL;
-- Serves opening a card, where the chapter is not known yet.
CREATE INDEX class_cards_code_hash_idx ON class_cards (code_hash);

CALL wall_in('class_cards', 'SELECT, INSERT, UPDATE (last_used_at, revoked_at)');
CREATE POLICY presented ON class_cards FOR SELECT USING (code_hash = presented_secret());

COMMENT ON TABLE class_cards IS 'Printed cards with which a class posts to its tank; codes are not kept.';
COMMENT ON COLUMN class_cards.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN class_cards.card_id IS 'Number inside the database.';
COMMENT ON COLUMN class_cards.tank_id IS 'The one tank it opens.';
COMMENT ON COLUMN class_cards.code_hash IS 'Argon2id of the code, salted by its first group.';
COMMENT ON COLUMN class_cards.made_by IS 'Who made it; NULL where nobody who was signed in did.';
COMMENT ON COLUMN class_cards.created_at IS 'When it was made.';
COMMENT ON COLUMN class_cards.last_used_at IS 'When a browser last came with it, to the minute; NULL if never.';
COMMENT ON COLUMN class_cards.revoked_at IS 'From then on it opens nothing; NULL while it does.';
COMMENT ON TABLE sign_in_throttles IS 'Failed sign-ins per account or card, known or not; outside every chapter.';
COMMENT ON COLUMN sign_in_throttles.account_hash IS 'SHA-256 of what was typed: the e-mail address, or a card''s first group.';
