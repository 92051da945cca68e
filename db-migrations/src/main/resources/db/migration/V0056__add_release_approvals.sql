CREATE TABLE release_approvals (
    chapter_id   int         NOT NULL,
    approval_id  int         GENERATED ALWAYS AS IDENTITY,
    site_id      int         NOT NULL,
    number       text        NOT NULL,
    agency       text        NOT NULL,
    species      text        NOT NULL,
    first_day    date        NOT NULL,
    last_day     date        NOT NULL,
    most_fish    int         NOT NULL,
    expires_on   date,
    note         text,
    withdrawn_by int,
    withdrawn_at timestamptz,
    CONSTRAINT release_approvals_pk PRIMARY KEY (chapter_id, approval_id),
    CONSTRAINT release_approvals_site_fk FOREIGN KEY (chapter_id, site_id) REFERENCES release_sites (chapter_id, site_id),
    CONSTRAINT release_approvals_withdrawn_by_fk FOREIGN KEY (chapter_id, withdrawn_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT release_approvals_number_check CHECK (length(number) BETWEEN 1 AND 80),
    CONSTRAINT release_approvals_agency_check CHECK (length(agency) BETWEEN 1 AND 120),
    CONSTRAINT release_approvals_species_check CHECK (length(species) BETWEEN 1 AND 40),
    CONSTRAINT release_approvals_days_check CHECK (last_day BETWEEN first_day AND first_day + 730),
    CONSTRAINT release_approvals_most_fish_check CHECK (most_fish BETWEEN 1 AND 100000),
    CONSTRAINT release_approvals_note_check CHECK (length(note) BETWEEN 1 AND 500)
);

CREATE UNIQUE INDEX release_approvals_number_key ON release_approvals (chapter_id, site_id, lower(number)) WHERE withdrawn_at IS NULL;

CALL wall_in('release_approvals', 'SELECT, INSERT, UPDATE');

COMMENT ON TABLE release_approvals IS 'What an agency allowed at a site, as the chapter copied it down; it is not the permit itself.';
COMMENT ON COLUMN release_approvals.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN release_approvals.approval_id IS 'Number inside the database.';
COMMENT ON COLUMN release_approvals.site_id IS 'The site it is for.';
COMMENT ON COLUMN release_approvals.number IS 'Number of the permit or approval.';
COMMENT ON COLUMN release_approvals.agency IS 'Who gave it, in words.';
COMMENT ON COLUMN release_approvals.species IS 'Which fish it is for, of a small list.';
COMMENT ON COLUMN release_approvals.first_day IS 'First day on which fish may be released.';
COMMENT ON COLUMN release_approvals.last_day IS 'Last day on which fish may be released.';
COMMENT ON COLUMN release_approvals.most_fish IS 'How many fish it allows in all.';
COMMENT ON COLUMN release_approvals.expires_on IS 'Last day on which the paper itself holds; NULL where it names none.';
COMMENT ON COLUMN release_approvals.note IS 'Its conditions, or anything else; NULL for nothing.';
COMMENT ON COLUMN release_approvals.withdrawn_by IS 'Who took it back; NULL while it stands.';
COMMENT ON COLUMN release_approvals.withdrawn_at IS 'When it was taken back; NULL while it stands.';
