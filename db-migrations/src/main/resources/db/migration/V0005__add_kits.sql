CREATE TABLE kits (
    chapter_id int         NOT NULL,
    kit_id     int         GENERATED ALWAYS AS IDENTITY,
    name       text        NOT NULL,
    created_at timestamptz NOT NULL DEFAULT now(),
    CONSTRAINT kits_pk PRIMARY KEY (chapter_id, kit_id),
    CONSTRAINT kits_name_key UNIQUE (chapter_id, name),
    CONSTRAINT kits_chapter_fk FOREIGN KEY (chapter_id) REFERENCES chapters (chapter_id),
    CONSTRAINT kits_name_check CHECK (length(name) BETWEEN 1 AND 80)
);

CREATE TABLE kit_scales (
    chapter_id int    NOT NULL,
    kit_id     int    NOT NULL,
    analyte    text   NOT NULL,
    unit       text   NOT NULL,
    counts_as  text   NOT NULL DEFAULT '',
    steps      real[] NOT NULL,
    CONSTRAINT kit_scales_pk PRIMARY KEY (chapter_id, kit_id, analyte),
    CONSTRAINT kit_scales_kit_fk FOREIGN KEY (chapter_id, kit_id) REFERENCES kits (chapter_id, kit_id),
    CONSTRAINT kit_scales_steps_check CHECK (cardinality(steps) BETWEEN 2 AND 30)
);

CALL wall_in('kits', 'SELECT, INSERT, UPDATE');
CALL wall_in('kit_scales', 'SELECT, INSERT, UPDATE, DELETE');

COMMENT ON TABLE kits IS 'How a chapter''s test cards are read; the steps are typed in by the chapter.';
COMMENT ON COLUMN kits.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN kits.kit_id IS 'Number inside the database.';
COMMENT ON COLUMN kits.name IS 'The chapter''s own name for it.';
COMMENT ON COLUMN kits.created_at IS 'When it was added.';
COMMENT ON TABLE kit_scales IS 'One card of a kit: which numbers it shows and what they count.';
COMMENT ON COLUMN kit_scales.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN kit_scales.kit_id IS 'The kit.';
COMMENT ON COLUMN kit_scales.analyte IS 'Public name of the analyte, such as total_ammonia.';
COMMENT ON COLUMN kit_scales.unit IS 'UCUM code of the numbers on the card.';
COMMENT ON COLUMN kit_scales.counts_as IS 'N, NH3, NH4, NO2, NO3 or CaCO3; empty where the unit says it all.';
COMMENT ON COLUMN kit_scales.steps IS 'The card''s numbers, ascending; the first means "below half the second".';
