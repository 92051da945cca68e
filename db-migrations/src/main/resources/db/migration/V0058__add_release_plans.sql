CREATE TABLE release_plans (
    chapter_id    int         NOT NULL,
    plan_id       int         GENERATED ALWAYS AS IDENTITY,
    season_id     int         NOT NULL,
    approval_id   int         NOT NULL,
    submission_id uuid        NOT NULL,
    starts_at     timestamptz NOT NULL,
    road_hours    real        NOT NULL,
    tank_c        real,
    stream_c      real,
    outside_c     real,
    oxygen_mg_l   real,
    air_pumps     boolean     NOT NULL,
    children      int         NOT NULL,
    adults        int         NOT NULL,
    lead_by       text,
    count_by      text,
    drive_by      text,
    measure_by    text,
    help_by       text,
    note          text,
    planned_by    int         NOT NULL,
    planned_at    timestamptz NOT NULL,
    dropped_by    int,
    dropped_at    timestamptz,
    CONSTRAINT release_plans_pk PRIMARY KEY (chapter_id, plan_id),
    CONSTRAINT release_plans_submission_key UNIQUE (chapter_id, submission_id),
    CONSTRAINT release_plans_season_fk FOREIGN KEY (chapter_id, season_id) REFERENCES seasons (chapter_id, season_id),
    CONSTRAINT release_plans_approval_fk FOREIGN KEY (chapter_id, approval_id) REFERENCES release_approvals (chapter_id, approval_id),
    CONSTRAINT release_plans_planned_by_fk FOREIGN KEY (chapter_id, planned_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT release_plans_dropped_by_fk FOREIGN KEY (chapter_id, dropped_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT release_plans_road_hours_check CHECK (road_hours BETWEEN 0 AND 24),
    CONSTRAINT release_plans_tank_c_check CHECK (tank_c BETWEEN 0 AND 35),
    CONSTRAINT release_plans_stream_c_check CHECK (stream_c BETWEEN 0 AND 35),
    CONSTRAINT release_plans_outside_c_check CHECK (outside_c BETWEEN -40 AND 60),
    CONSTRAINT release_plans_oxygen_check CHECK (oxygen_mg_l BETWEEN 0 AND 25),
    CONSTRAINT release_plans_children_check CHECK (children BETWEEN 0 AND 1000),
    CONSTRAINT release_plans_adults_check CHECK (adults BETWEEN 0 AND 1000),
    CONSTRAINT release_plans_lead_by_check CHECK (length(lead_by) BETWEEN 1 AND 60),
    CONSTRAINT release_plans_count_by_check CHECK (length(count_by) BETWEEN 1 AND 60),
    CONSTRAINT release_plans_drive_by_check CHECK (length(drive_by) BETWEEN 1 AND 60),
    CONSTRAINT release_plans_measure_by_check CHECK (length(measure_by) BETWEEN 1 AND 60),
    CONSTRAINT release_plans_help_by_check CHECK (length(help_by) BETWEEN 1 AND 60),
    CONSTRAINT release_plans_note_check CHECK (length(note) BETWEEN 1 AND 500)
);

CREATE INDEX release_plans_approval_idx ON release_plans (chapter_id, approval_id) WHERE dropped_at IS NULL;

CALL wall_in('release_plans', 'SELECT, INSERT, UPDATE');

COMMENT ON TABLE release_plans IS 'When fish of which tanks go to an approved site, and how.';
COMMENT ON COLUMN release_plans.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN release_plans.plan_id IS 'Number inside the database.';
COMMENT ON COLUMN release_plans.season_id IS 'The season in whose counts the fish stand.';
COMMENT ON COLUMN release_plans.approval_id IS 'The approval it leans on, and with it the site.';
COMMENT ON COLUMN release_plans.submission_id IS 'Minted with the form, so that sending it twice stores it once.';
COMMENT ON COLUMN release_plans.starts_at IS 'When they are to be at the water.';
COMMENT ON COLUMN release_plans.road_hours IS 'From the tank to the water, h.';
COMMENT ON COLUMN release_plans.tank_c IS 'Water of the tanks, and of the boxes, °C; NULL where not known yet.';
COMMENT ON COLUMN release_plans.stream_c IS 'Water of the stream as expected, °C; NULL where not known yet.';
COMMENT ON COLUMN release_plans.outside_c IS 'Air around the boxes on the way, °C; NULL where not known yet.';
COMMENT ON COLUMN release_plans.oxygen_mg_l IS 'Oxygen in the boxes at the start, mg/L; NULL takes what the water holds.';
COMMENT ON COLUMN release_plans.air_pumps IS 'Whether every box has air from a battery.';
COMMENT ON COLUMN release_plans.children IS 'Children who come along.';
COMMENT ON COLUMN release_plans.adults IS 'Adults who are with them at the water.';
COMMENT ON COLUMN release_plans.lead_by IS 'Who leads at the water, as a duty; NULL for nobody yet.';
COMMENT ON COLUMN release_plans.count_by IS 'Who counts, as a duty; NULL for nobody yet.';
COMMENT ON COLUMN release_plans.drive_by IS 'Who drives the fish, as a duty; NULL for nobody yet.';
COMMENT ON COLUMN release_plans.measure_by IS 'Who reads temperature and oxygen, as a duty; NULL for nobody yet.';
COMMENT ON COLUMN release_plans.help_by IS 'Who has first aid and the phone, as a duty; NULL for nobody yet.';
COMMENT ON COLUMN release_plans.note IS 'Anything else; NULL for nothing.';
COMMENT ON COLUMN release_plans.planned_by IS 'Who planned it.';
COMMENT ON COLUMN release_plans.planned_at IS 'When it was planned.';
COMMENT ON COLUMN release_plans.dropped_by IS 'Who called it off; NULL while it stands.';
COMMENT ON COLUMN release_plans.dropped_at IS 'When it was called off; NULL while it stands.';

CREATE TABLE release_plan_tanks (
    chapter_id     int  NOT NULL,
    plan_id        int  NOT NULL,
    tank_id        int  NOT NULL,
    fish           int  NOT NULL,
    mean_length_mm real,
    mean_weight_g  real,
    boxes          int  NOT NULL,
    box_l          real NOT NULL,
    CONSTRAINT release_plan_tanks_pk PRIMARY KEY (chapter_id, plan_id, tank_id),
    CONSTRAINT release_plan_tanks_plan_fk FOREIGN KEY (chapter_id, plan_id) REFERENCES release_plans (chapter_id, plan_id),
    CONSTRAINT release_plan_tanks_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT release_plan_tanks_fish_check CHECK (fish BETWEEN 1 AND 100000),
    CONSTRAINT release_plan_tanks_length_check CHECK (mean_length_mm BETWEEN 10 AND 400),
    CONSTRAINT release_plan_tanks_weight_check CHECK (mean_weight_g > 0 AND mean_weight_g <= 1000),
    CONSTRAINT release_plan_tanks_boxes_check CHECK (boxes BETWEEN 1 AND 100),
    CONSTRAINT release_plan_tanks_box_check CHECK (box_l BETWEEN 1 AND 1000)
);

CREATE INDEX release_plan_tanks_tank_idx ON release_plan_tanks (chapter_id, tank_id);

CALL wall_in('release_plan_tanks', 'SELECT, INSERT, DELETE');

COMMENT ON TABLE release_plan_tanks IS 'The fish of one tank in a plan, and what they travel in.';
COMMENT ON COLUMN release_plan_tanks.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN release_plan_tanks.plan_id IS 'The plan.';
COMMENT ON COLUMN release_plan_tanks.tank_id IS 'The tank that they leave.';
COMMENT ON COLUMN release_plan_tanks.fish IS 'How many.';
COMMENT ON COLUMN release_plan_tanks.mean_length_mm IS 'Their mean length, mm; NULL where not known yet.';
COMMENT ON COLUMN release_plan_tanks.mean_weight_g IS 'What one weighs, g; NULL takes what trout of that length weigh.';
COMMENT ON COLUMN release_plan_tanks.boxes IS 'Boxes that they travel in.';
COMMENT ON COLUMN release_plan_tanks.box_l IS 'Water in each box, L.';
