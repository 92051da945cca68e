CREATE TABLE people (
    chapter_id    int         NOT NULL,
    person_id     int         GENERATED ALWAYS AS IDENTITY,
    code          text        NOT NULL,
    email         text        NOT NULL,
    email_hash    bytea       NOT NULL,
    name          text        NOT NULL,
    role          text        NOT NULL,
    password_hash text,
    created_at    timestamptz NOT NULL DEFAULT now(),
    disabled_at   timestamptz,
    CONSTRAINT people_pk PRIMARY KEY (chapter_id, person_id),
    CONSTRAINT people_code_key UNIQUE (chapter_id, code),
    CONSTRAINT people_email_key UNIQUE (chapter_id, email),
    CONSTRAINT people_chapter_fk FOREIGN KEY (chapter_id) REFERENCES chapters (chapter_id),
    CONSTRAINT people_role_check CHECK (role IN ('coordinator', 'mentor', 'teacher')),
    CONSTRAINT people_email_check CHECK (email = lower(email) AND length(email) <= 254)
);

-- Serves signing in, where the chapter is not known yet.
CREATE INDEX people_email_hash_idx ON people (email_hash);

CALL wall_in('people', 'SELECT, INSERT, UPDATE');
CREATE POLICY named_by_email ON people FOR SELECT USING (email_hash = presented_secret());

COMMENT ON TABLE people IS 'Adults who sign in. Pupils have no accounts.';
COMMENT ON COLUMN people.chapter_id IS 'The chapter they work for.';
COMMENT ON COLUMN people.person_id IS 'Number inside the database.';
COMMENT ON COLUMN people.code IS 'Random public code, for addresses.';
COMMENT ON COLUMN people.email IS 'Lower-case address that they sign in with.';
COMMENT ON COLUMN people.email_hash IS 'SHA-256 of the address, for looking up a sign-in before the chapter is known.';
COMMENT ON COLUMN people.name IS 'How the chapter calls them.';
COMMENT ON COLUMN people.role IS 'coordinator, mentor or teacher.';
COMMENT ON COLUMN people.password_hash IS 'Argon2id in PHC form; NULL until the invitation was used.';
COMMENT ON COLUMN people.created_at IS 'When they were added.';
COMMENT ON COLUMN people.disabled_at IS 'From then on they cannot sign in; NULL while they can.';
