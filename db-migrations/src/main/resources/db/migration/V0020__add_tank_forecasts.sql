CREATE TABLE tank_forecasts (
    chapter_id     int         NOT NULL,
    tank_id        int         NOT NULL,
    as_of          timestamptz NOT NULL,
    computed_at    timestamptz NOT NULL,
    chance         real        NOT NULL,
    exposure       double precision NOT NULL,
    driver         text        NOT NULL,
    hours_to_limit real,
    last_reading_at timestamptz,
    last_reading_by text,
    detail         jsonb       NOT NULL,
    CONSTRAINT tank_forecasts_pk PRIMARY KEY (chapter_id, tank_id),
    CONSTRAINT tank_forecasts_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT tank_forecasts_chance_check CHECK (chance BETWEEN 0 AND 1)
);

CALL wall_in('tank_forecasts', 'SELECT, INSERT, UPDATE, DELETE');

COMMENT ON TABLE tank_forecasts IS 'The next 72 hours of each tank: all that the rounds read.';
COMMENT ON COLUMN tank_forecasts.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN tank_forecasts.tank_id IS 'The tank.';
COMMENT ON COLUMN tank_forecasts.as_of IS 'The time it looks ahead from.';
COMMENT ON COLUMN tank_forecasts.computed_at IS 'When it was worked out.';
COMMENT ON COLUMN tank_forecasts.chance IS 'Probability that the water is beyond a limit for two hours in the 72, 0 to 1.';
COMMENT ON COLUMN tank_forecasts.exposure IS 'Expected fish-hours beyond a limit in the 72, weighted by how far.';
COMMENT ON COLUMN tank_forecasts.driver IS 'What adds most to the exposure.';
COMMENT ON COLUMN tank_forecasts.hours_to_limit IS 'Median hours to the first limit; 0 when met, NULL when the odds are against it.';
COMMENT ON COLUMN tank_forecasts.last_reading_at IS 'When somebody last looked; NULL if never.';
COMMENT ON COLUMN tank_forecasts.last_reading_by IS 'The label of that reading; NULL where none was given.';
COMMENT ON COLUMN tank_forecasts.detail IS 'Reasons, acts, spread and the recent points of each series, for drawing.';
