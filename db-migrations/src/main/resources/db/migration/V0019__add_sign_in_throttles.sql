CREATE TABLE sign_in_throttles (
    account_hash   bytea       NOT NULL,
    failures       int         NOT NULL,
    last_failed_at timestamptz NOT NULL,
    CONSTRAINT sign_in_throttles_pk PRIMARY KEY (account_hash)
);

ALTER TABLE sign_in_throttles ENABLE ROW LEVEL SECURITY;
ALTER TABLE sign_in_throttles FORCE ROW LEVEL SECURITY;
CREATE POLICY named_by_email ON sign_in_throttles USING (account_hash = presented_secret());
GRANT SELECT, INSERT, UPDATE, DELETE ON sign_in_throttles TO tankrounds_app;
GRANT SELECT ON sign_in_throttles TO tankrounds_backup;

COMMENT ON TABLE sign_in_throttles IS 'Failed sign-ins per account, known or not; outside every chapter.';
COMMENT ON COLUMN sign_in_throttles.account_hash IS 'SHA-256 of the e-mail address that was typed.';
COMMENT ON COLUMN sign_in_throttles.failures IS 'Failures in a row.';
COMMENT ON COLUMN sign_in_throttles.last_failed_at IS 'When the last one was; the waiting time counts from here.';
