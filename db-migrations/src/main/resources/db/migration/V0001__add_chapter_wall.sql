-- Second wall behind the application's own checks: a row is visible only inside its chapter.
-- FORCE makes the wall hold for the owner too. After COMMIT a local setting reads '' and not NULL, hence nullif.
CREATE FUNCTION current_chapter() RETURNS int
    LANGUAGE sql STABLE PARALLEL SAFE
    RETURN nullif(current_setting('tankrounds.chapter', true), '')::int;

COMMENT ON FUNCTION current_chapter() IS
    'The chapter whose rows this transaction may touch; NULL (no rows at all) where none was set.';

-- What a caller who has no chapter yet claims to know: a session, a token, a link, an e-mail address (as hash).
CREATE FUNCTION presented_secret() RETURNS bytea
    LANGUAGE sql STABLE PARALLEL SAFE
    RETURN decode(nullif(current_setting('tankrounds.secret', true), ''), 'hex');

COMMENT ON FUNCTION presented_secret() IS
    'SHA-256 of the secret that a caller without a chapter presents; NULL where none was set.';

CREATE PROCEDURE wall_in(guarded regclass, rights text)
    LANGUAGE plpgsql AS $$
BEGIN
    EXECUTE format('ALTER TABLE %s ENABLE ROW LEVEL SECURITY', guarded);
    EXECUTE format('ALTER TABLE %s FORCE ROW LEVEL SECURITY', guarded);
    EXECUTE format('CREATE POLICY inside_chapter ON %s USING (chapter_id = current_chapter()) '
                   'WITH CHECK (chapter_id = current_chapter())', guarded);
    EXECUTE format('GRANT %s ON %s TO tankrounds_app', rights, guarded);
    EXECUTE format('GRANT SELECT ON %s TO tankrounds_backup', guarded);
END
$$;

COMMENT ON PROCEDURE wall_in(regclass, text) IS
    'Puts a table behind the chapter wall, gives the application the named rights and the backup role sight of it.';
