CREATE TABLE release_rules (
    chapter_id         int  NOT NULL,
    children_per_adult int  NOT NULL,
    deepest_cm         int  NOT NULL,
    other_rules        text,
    CONSTRAINT release_rules_pk PRIMARY KEY (chapter_id),
    CONSTRAINT release_rules_chapter_fk FOREIGN KEY (chapter_id) REFERENCES chapters (chapter_id),
    CONSTRAINT release_rules_children_check CHECK (children_per_adult BETWEEN 1 AND 30),
    CONSTRAINT release_rules_deepest_check CHECK (deepest_cm BETWEEN 0 AND 60),
    CONSTRAINT release_rules_other_check CHECK (length(other_rules) BETWEEN 1 AND 500)
);

CALL wall_in('release_rules', 'SELECT, INSERT, UPDATE');

COMMENT ON TABLE release_rules IS 'A chapter''s own rules for days at the water; without a row none are set.';
COMMENT ON COLUMN release_rules.chapter_id IS 'The chapter.';
COMMENT ON COLUMN release_rules.children_per_adult IS 'How many children one adult may be with at the water.';
COMMENT ON COLUMN release_rules.deepest_cm IS 'Deepest water that a child may stand in, cm; 0 where none may.';
COMMENT ON COLUMN release_rules.other_rules IS 'Further rules, in words; NULL for none.';
