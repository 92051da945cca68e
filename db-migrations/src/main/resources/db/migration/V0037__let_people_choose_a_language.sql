ALTER TABLE people ADD COLUMN language text;
ALTER TABLE people ADD CONSTRAINT people_language_check CHECK (language IN ('en', 'es'));

COMMENT ON COLUMN people.language IS 'Language of their pages, en or es; NULL while it is the one that their browser asks for.';
