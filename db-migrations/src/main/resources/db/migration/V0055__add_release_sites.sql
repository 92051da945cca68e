CREATE TABLE release_sites (
    chapter_id  int              NOT NULL,
    site_id     int              GENERATED ALWAYS AS IDENTITY,
    name        text             NOT NULL,
    water       text             NOT NULL,
    way_there   text,
    latitude    double precision,
    longitude   double precision,
    elevation_m real,
    CONSTRAINT release_sites_pk PRIMARY KEY (chapter_id, site_id),
    CONSTRAINT release_sites_name_key UNIQUE (chapter_id, name),
    CONSTRAINT release_sites_chapter_fk FOREIGN KEY (chapter_id) REFERENCES chapters (chapter_id),
    CONSTRAINT release_sites_name_check CHECK (length(name) BETWEEN 1 AND 120),
    CONSTRAINT release_sites_water_check CHECK (length(water) BETWEEN 1 AND 120),
    CONSTRAINT release_sites_way_there_check CHECK (length(way_there) BETWEEN 1 AND 500),
    CONSTRAINT release_sites_place_check CHECK ((latitude IS NULL) = (longitude IS NULL)
        AND latitude BETWEEN -90 AND 90 AND longitude BETWEEN -180 AND 180),
    CONSTRAINT release_sites_elevation_check CHECK (elevation_m BETWEEN -430 AND 5500)
);

CALL wall_in('release_sites', 'SELECT, INSERT, UPDATE');

COMMENT ON TABLE release_sites IS 'A place at a stream where fish may be released while an approval says so, and where the stream is looked at.';
COMMENT ON COLUMN release_sites.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN release_sites.site_id IS 'Number inside the database.';
COMMENT ON COLUMN release_sites.name IS 'What the chapter calls it.';
COMMENT ON COLUMN release_sites.water IS 'The stream, river or lake, as on the map.';
COMMENT ON COLUMN release_sites.way_there IS 'County, access, parking; NULL where not written down.';
COMMENT ON COLUMN release_sites.latitude IS 'Degrees north, WGS 84; NULL where not written down.';
COMMENT ON COLUMN release_sites.longitude IS 'Degrees east, WGS 84; NULL where not written down.';
COMMENT ON COLUMN release_sites.elevation_m IS 'Height above the sea, m, for the saturation of oxygen; NULL counts as sea level.';
