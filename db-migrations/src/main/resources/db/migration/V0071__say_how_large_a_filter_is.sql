ALTER TABLE tanks
    ADD COLUMN filter_area_m2 real,
    ADD CONSTRAINT tanks_filter_area_check CHECK (filter_area_m2 > 0 AND filter_area_m2 <= 1000);

COMMENT ON COLUMN tanks.filter_area_m2 IS 'Surface of the filter''s media, m²; NULL where nobody said.';
