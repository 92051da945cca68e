CREATE TABLE dirty_tanks (
    chapter_id int         NOT NULL,
    tank_id    int         NOT NULL,
    since      timestamptz NOT NULL,
    CONSTRAINT dirty_tanks_pk PRIMARY KEY (chapter_id, tank_id),
    CONSTRAINT dirty_tanks_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id)
);

CALL wall_in('dirty_tanks', 'SELECT, INSERT, UPDATE, DELETE');

COMMENT ON TABLE dirty_tanks IS 'Tanks whose forecast is older than what is known of them; written with the reading, drained at once.';
COMMENT ON COLUMN dirty_tanks.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN dirty_tanks.tank_id IS 'The tank.';
COMMENT ON COLUMN dirty_tanks.since IS 'When something new was learned.';
