CREATE TABLE classrooms (
    chapter_id   int         NOT NULL,
    classroom_id int         GENERATED ALWAYS AS IDENTITY,
    school_id    int         NOT NULL,
    name         text        NOT NULL,
    created_at   timestamptz NOT NULL DEFAULT now(),
    CONSTRAINT classrooms_pk PRIMARY KEY (chapter_id, classroom_id),
    CONSTRAINT classrooms_name_key UNIQUE (chapter_id, school_id, name),
    CONSTRAINT classrooms_school_fk FOREIGN KEY (chapter_id, school_id) REFERENCES schools (chapter_id, school_id),
    CONSTRAINT classrooms_name_check CHECK (length(name) BETWEEN 1 AND 80)
);

CALL wall_in('classrooms', 'SELECT, INSERT, UPDATE');

COMMENT ON TABLE classrooms IS 'A room of a school in which a tank stands.';
COMMENT ON COLUMN classrooms.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN classrooms.classroom_id IS 'Number inside the database.';
COMMENT ON COLUMN classrooms.school_id IS 'The school it is in.';
COMMENT ON COLUMN classrooms.name IS 'What stands on the door: a room, never a person.';
COMMENT ON COLUMN classrooms.created_at IS 'When it was added.';
