CREATE TABLE tank_teachers (
    chapter_id int NOT NULL,
    tank_id    int NOT NULL,
    person_id  int NOT NULL,
    CONSTRAINT tank_teachers_pk PRIMARY KEY (chapter_id, tank_id, person_id),
    CONSTRAINT tank_teachers_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT tank_teachers_person_fk FOREIGN KEY (chapter_id, person_id) REFERENCES people (chapter_id, person_id)
);

-- Serves the teacher's own page: which tanks are mine.
CREATE INDEX tank_teachers_person_idx ON tank_teachers (chapter_id, person_id);

CALL wall_in('tank_teachers', 'SELECT, INSERT, DELETE');

COMMENT ON TABLE tank_teachers IS 'Which teachers look after which tank: the only tanks that they see.';
COMMENT ON COLUMN tank_teachers.chapter_id IS 'The chapter of both.';
COMMENT ON COLUMN tank_teachers.tank_id IS 'The tank.';
COMMENT ON COLUMN tank_teachers.person_id IS 'The teacher.';
