ALTER TABLE lots
    ADD COLUMN eyed_on date,
    ADD COLUMN hatched_on date;

COMMENT ON COLUMN lots.eyed_on IS 'Day on which the class saw half of them eyed; NULL until then.';
COMMENT ON COLUMN lots.hatched_on IS 'Day on which the class saw half of them hatched; NULL until then.';
