ALTER TABLE seasons
    ADD COLUMN release_length_mm int,
    ADD CONSTRAINT seasons_release_length_check CHECK (release_length_mm BETWEEN 20 AND 300);

COMMENT ON COLUMN seasons.release_length_mm IS 'How long fish are to be when they leave, mm, as the agency asks; NULL where nobody said.';
