ALTER TABLE count_entries
    ADD COLUMN stage text,
    ADD COLUMN thermal_units_c real,
    ADD CONSTRAINT count_entries_stage_check CHECK (
        stage IS NULL OR (kind = 'moved' AND stage IN ('egg', 'sac_fry', 'feeding'))),
    ADD CONSTRAINT count_entries_thermal_units_c_check CHECK (
        thermal_units_c IS NULL OR (stage IS NOT NULL AND thermal_units_c >= 0));

COMMENT ON COLUMN count_entries.stage IS 'egg, sac_fry or feeding: what was moved; NULL for all else, and for moves of which nobody said it: fish that fed.';
COMMENT ON COLUMN count_entries.thermal_units_c IS 'Degree-Celsius days of the moved since fertilisation, by the tank that they left; NULL where it cannot tell.';
