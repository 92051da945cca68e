ALTER TABLE summary_links ADD COLUMN submission_id uuid;

CREATE INDEX summary_links_submission_idx ON summary_links (chapter_id, submission_id) WHERE submission_id IS NOT NULL;

COMMENT ON COLUMN summary_links.submission_id IS 'Minted with the form: sent again, it withdraws the link that nobody got to see; NULL for links from before forms had one.';
