CREATE TABLE schools (
    chapter_id  int         NOT NULL,
    school_id   int         GENERATED ALWAYS AS IDENTITY,
    code        text        NOT NULL,
    name        text        NOT NULL,
    place       text,
    elevation_m real,
    time_zone   text        NOT NULL,
    created_at  timestamptz NOT NULL DEFAULT now(),
    CONSTRAINT schools_pk PRIMARY KEY (chapter_id, school_id),
    CONSTRAINT schools_code_key UNIQUE (chapter_id, code),
    CONSTRAINT schools_name_key UNIQUE (chapter_id, name),
    CONSTRAINT schools_chapter_fk FOREIGN KEY (chapter_id) REFERENCES chapters (chapter_id),
    CONSTRAINT schools_name_check CHECK (length(name) BETWEEN 1 AND 120),
    CONSTRAINT schools_elevation_m_check CHECK (elevation_m BETWEEN -430 AND 5500)
);

CALL wall_in('schools', 'SELECT, INSERT, UPDATE');

COMMENT ON TABLE schools IS 'A school that the chapter mentors.';
COMMENT ON COLUMN schools.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN schools.school_id IS 'Number inside the database.';
COMMENT ON COLUMN schools.code IS 'Random public code, for addresses.';
COMMENT ON COLUMN schools.name IS 'As the volunteers call it.';
COMMENT ON COLUMN schools.place IS 'Where to drive, in words; NULL where nobody has written it down.';
COMMENT ON COLUMN schools.elevation_m IS 'Metres above sea level, for oxygen saturation; NULL counts as sea level.';
COMMENT ON COLUMN schools.time_zone IS 'IANA name; the class''s clock.';
COMMENT ON COLUMN schools.created_at IS 'When it was added.';
