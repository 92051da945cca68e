CREATE TABLE setup_links (
    link_hash  bytea       NOT NULL,
    created_at timestamptz NOT NULL,
    expires_at timestamptz NOT NULL,
    used_at    timestamptz,
    CONSTRAINT setup_links_pk PRIMARY KEY (link_hash)
);

ALTER TABLE setup_links ENABLE ROW LEVEL SECURITY;
ALTER TABLE setup_links FORCE ROW LEVEL SECURITY;
CREATE POLICY made_at_start ON setup_links FOR INSERT WITH CHECK (true);
CREATE POLICY presented ON setup_links USING (link_hash = presented_secret());
GRANT SELECT, INSERT, UPDATE (used_at) ON setup_links TO tankrounds_app;
GRANT SELECT ON setup_links TO tankrounds_backup;

COMMENT ON TABLE setup_links IS 'One-time links that set up a chapter and its first coordinator; outside every chapter.';
COMMENT ON COLUMN setup_links.link_hash IS 'SHA-256 of the random value in the link.';
COMMENT ON COLUMN setup_links.created_at IS 'When it was printed.';
COMMENT ON COLUMN setup_links.expires_at IS 'From then on it opens nothing.';
COMMENT ON COLUMN setup_links.used_at IS 'When a chapter was set up with it; NULL until then.';
