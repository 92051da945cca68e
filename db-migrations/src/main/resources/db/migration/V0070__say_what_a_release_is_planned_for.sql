ALTER TABLE seasons
    ADD COLUMN release_length_mm int,
    ADD COLUMN release_on date,
    ADD CONSTRAINT seasons_release_length_check CHECK (release_length_mm BETWEEN 20 AND 300),
    ADD CONSTRAINT seasons_release_on_check CHECK (release_on BETWEEN starts_on AND ends_on);

COMMENT ON COLUMN seasons.release_length_mm IS 'How long fish are to be when they leave, mm, as the agency asks; NULL where nobody said.';
COMMENT ON COLUMN seasons.release_on IS 'Day for which the release is planned; NULL where nobody said.';
