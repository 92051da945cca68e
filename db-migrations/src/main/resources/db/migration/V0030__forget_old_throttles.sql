-- Guesses at addresses that nobody has would otherwise be kept for ever: a day after the last one they may go.
CREATE POLICY old_seen ON sign_in_throttles FOR SELECT USING (last_failed_at < now() - interval '1 day');
CREATE POLICY old_forgotten ON sign_in_throttles FOR DELETE USING (last_failed_at < now() - interval '1 day');
