ALTER TABLE people ADD COLUMN temperature_unit text NOT NULL DEFAULT 'Cel';
ALTER TABLE people ADD CONSTRAINT people_temperature_unit_check CHECK (temperature_unit IN ('Cel', '[degF]'));

COMMENT ON COLUMN people.temperature_unit IS 'UCUM code in which they read temperatures.';
