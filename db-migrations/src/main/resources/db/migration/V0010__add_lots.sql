CREATE TABLE lots (
    chapter_id       int         NOT NULL,
    lot_id           int         GENERATED ALWAYS AS IDENTITY,
    season_id        int         NOT NULL,
    tank_id          int         NOT NULL,
    eggs             int         NOT NULL,
    received_at      timestamptz NOT NULL,
    thermal_units_c  real,
    supplier         text,
    certificate      text,
    first_feeding_on date,
    created_at       timestamptz NOT NULL DEFAULT now(),
    CONSTRAINT lots_pk PRIMARY KEY (chapter_id, lot_id),
    CONSTRAINT lots_season_fk FOREIGN KEY (chapter_id, season_id) REFERENCES seasons (chapter_id, season_id),
    CONSTRAINT lots_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT lots_eggs_check CHECK (eggs BETWEEN 1 AND 100000),
    CONSTRAINT lots_thermal_units_c_check CHECK (thermal_units_c BETWEEN 0 AND 1000)
);

-- Serves the tank's facts for the forecast.
CREATE INDEX lots_tank_idx ON lots (chapter_id, tank_id, received_at);

CALL wall_in('lots', 'SELECT, INSERT, UPDATE');

COMMENT ON TABLE lots IS 'Eggs that came together into one tank.';
COMMENT ON COLUMN lots.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN lots.lot_id IS 'Number inside the database.';
COMMENT ON COLUMN lots.season_id IS 'The season.';
COMMENT ON COLUMN lots.tank_id IS 'The tank they went into.';
COMMENT ON COLUMN lots.eggs IS 'Eggs received, as the supplier counted them.';
COMMENT ON COLUMN lots.received_at IS 'When they came.';
COMMENT ON COLUMN lots.thermal_units_c IS 'Degree-Celsius days since fertilisation on arrival; NULL where nobody told.';
COMMENT ON COLUMN lots.supplier IS 'Where they came from; NULL where not written down.';
COMMENT ON COLUMN lots.certificate IS 'Number of the health certificate; NULL where none was given.';
COMMENT ON COLUMN lots.first_feeding_on IS 'Day of first feeding that the class saw; NULL until then.';
COMMENT ON COLUMN lots.created_at IS 'When it was added.';
