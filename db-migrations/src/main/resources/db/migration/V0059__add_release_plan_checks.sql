CREATE TABLE release_plan_checks (
    chapter_id  int         NOT NULL,
    plan_id     int         NOT NULL,
    line        text        NOT NULL,
    answer      text        NOT NULL,
    answered_by int         NOT NULL,
    answered_at timestamptz NOT NULL,
    CONSTRAINT release_plan_checks_pk PRIMARY KEY (chapter_id, plan_id, line),
    CONSTRAINT release_plan_checks_plan_fk FOREIGN KEY (chapter_id, plan_id) REFERENCES release_plans (chapter_id, plan_id),
    CONSTRAINT release_plan_checks_answered_by_fk FOREIGN KEY (chapter_id, answered_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT release_plan_checks_line_check CHECK (length(line) BETWEEN 1 AND 40),
    CONSTRAINT release_plan_checks_answer_check CHECK (answer IN ('yes', 'no', 'unknown'))
);

CALL wall_in('release_plan_checks', 'SELECT, INSERT, UPDATE');

COMMENT ON TABLE release_plan_checks IS 'What was looked at before a release, and what was found; a line without a row was not.';
COMMENT ON COLUMN release_plan_checks.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN release_plan_checks.plan_id IS 'The plan.';
COMMENT ON COLUMN release_plan_checks.line IS 'What was looked at, of a fixed list.';
COMMENT ON COLUMN release_plan_checks.answer IS 'yes, no, or unknown again.';
COMMENT ON COLUMN release_plan_checks.answered_by IS 'Who answered last.';
COMMENT ON COLUMN release_plan_checks.answered_at IS 'When.';
