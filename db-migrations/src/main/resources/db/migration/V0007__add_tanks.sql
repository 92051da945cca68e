CREATE TABLE tanks (
    chapter_id             int         NOT NULL,
    tank_id                int         GENERATED ALWAYS AS IDENTITY,
    classroom_id           int         NOT NULL,
    kit_id                 int         NOT NULL,
    code                   text        NOT NULL,
    volume_l               real        NOT NULL,
    chiller_set_point_c    real,
    filter_kind            text        NOT NULL DEFAULT 'other',
    filter_started_on      date,
    source_alkalinity_mg_l real,
    source_chloride_mg_l   real,
    source_disinfectant    text,
    thermometer_unit       text        NOT NULL DEFAULT '[degF]',
    created_at             timestamptz NOT NULL DEFAULT now(),
    retired_at             timestamptz,
    CONSTRAINT tanks_pk PRIMARY KEY (chapter_id, tank_id),
    CONSTRAINT tanks_code_key UNIQUE (chapter_id, code),
    CONSTRAINT tanks_classroom_fk FOREIGN KEY (chapter_id, classroom_id)
        REFERENCES classrooms (chapter_id, classroom_id),
    CONSTRAINT tanks_kit_fk FOREIGN KEY (chapter_id, kit_id) REFERENCES kits (chapter_id, kit_id),
    CONSTRAINT tanks_volume_l_check CHECK (volume_l BETWEEN 5 AND 5000),
    CONSTRAINT tanks_chiller_set_point_c_check CHECK (chiller_set_point_c BETWEEN 1 AND 25),
    CONSTRAINT tanks_filter_kind_check CHECK (filter_kind IN ('sponge', 'hang_on', 'canister', 'trickle', 'other')),
    CONSTRAINT tanks_source_alkalinity_mg_l_check CHECK (source_alkalinity_mg_l BETWEEN 0 AND 1000),
    CONSTRAINT tanks_source_chloride_mg_l_check CHECK (source_chloride_mg_l BETWEEN 0 AND 2000),
    CONSTRAINT tanks_source_disinfectant_check CHECK (source_disinfectant IN ('none', 'chlorine', 'chloramine')),
    CONSTRAINT tanks_thermometer_unit_check CHECK (thermometer_unit IN ('Cel', '[degF]'))
);

CALL wall_in('tanks', 'SELECT, INSERT, UPDATE');

COMMENT ON TABLE tanks IS 'A chilled aquarium in a classroom.';
COMMENT ON COLUMN tanks.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN tanks.tank_id IS 'Number inside the database.';
COMMENT ON COLUMN tanks.classroom_id IS 'The room it stands in.';
COMMENT ON COLUMN tanks.kit_id IS 'The kit that its class uses.';
COMMENT ON COLUMN tanks.code IS 'Random public code: in addresses, on cards, in files.';
COMMENT ON COLUMN tanks.volume_l IS 'Litres of water.';
COMMENT ON COLUMN tanks.chiller_set_point_c IS 'Degrees Celsius that the chiller is set to; NULL where unknown.';
COMMENT ON COLUMN tanks.filter_kind IS 'sponge, hang_on, canister, trickle or other.';
COMMENT ON COLUMN tanks.filter_started_on IS 'Day since which the filter has had ammonia to live on; NULL where unknown.';
COMMENT ON COLUMN tanks.source_alkalinity_mg_l IS 'Alkalinity of the tap water, mg/L as CaCO3; NULL where unknown.';
COMMENT ON COLUMN tanks.source_chloride_mg_l IS 'Chloride of the tap water, mg/L; NULL counts as 5.';
COMMENT ON COLUMN tanks.source_disinfectant IS 'What the water works adds: none, chlorine, chloramine; NULL where unknown.';
COMMENT ON COLUMN tanks.thermometer_unit IS 'UCUM code in which its class reads temperature.';
COMMENT ON COLUMN tanks.created_at IS 'When it was added.';
COMMENT ON COLUMN tanks.retired_at IS 'From then on it is off the rounds; NULL while in use.';
