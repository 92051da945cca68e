CREATE TABLE tasks (
    chapter_id int         NOT NULL,
    task_id    int         GENERATED ALWAYS AS IDENTITY,
    tank_id    int         NOT NULL,
    act        text,
    words      text        NOT NULL,
    asked_by   int,
    asked_at   timestamptz NOT NULL,
    done_at    timestamptz,
    done_by    int,
    card_id    int,
    dropped_at timestamptz,
    CONSTRAINT tasks_pk PRIMARY KEY (chapter_id, task_id),
    CONSTRAINT tasks_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT tasks_asked_by_fk FOREIGN KEY (chapter_id, asked_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT tasks_done_by_fk FOREIGN KEY (chapter_id, done_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT tasks_card_fk FOREIGN KEY (chapter_id, card_id) REFERENCES class_cards (chapter_id, card_id),
    CONSTRAINT tasks_words_check CHECK (length(words) BETWEEN 1 AND 500),
    CONSTRAINT tasks_asker_check CHECK ((act IS NULL) = (asked_by IS NOT NULL)),
    CONSTRAINT tasks_advised_check CHECK (act IS NULL OR done_at IS NOT NULL)
);

CREATE INDEX tasks_newest_idx ON tasks (chapter_id, tank_id, asked_at DESC);

CALL wall_in('tasks', 'SELECT, INSERT, UPDATE (done_at, done_by, card_id, dropped_at)');

COMMENT ON TABLE tasks IS 'What somebody asked a class to do, and what of the advice a class ticked as done.';
COMMENT ON COLUMN tasks.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN tasks.task_id IS 'Number inside the database.';
COMMENT ON COLUMN tasks.tank_id IS 'The tank it is about.';
COMMENT ON COLUMN tasks.act IS 'Kind of the advised act that was ticked; NULL where a person asked.';
COMMENT ON COLUMN tasks.words IS 'What to do, as the class read it.';
COMMENT ON COLUMN tasks.asked_by IS 'Who asked; NULL where it was advice.';
COMMENT ON COLUMN tasks.asked_at IS 'When it was asked, or the advice ticked.';
COMMENT ON COLUMN tasks.done_at IS 'When the class ticked it; NULL until then.';
COMMENT ON COLUMN tasks.done_by IS 'Who was signed in then; NULL where a class card ticked it, or nobody yet.';
COMMENT ON COLUMN tasks.card_id IS 'The class card that ticked it; NULL otherwise.';
COMMENT ON COLUMN tasks.dropped_at IS 'Not wanted any more, or ticked by mistake; NULL while it holds.';
