ALTER TABLE lots
    ADD COLUMN method text NOT NULL DEFAULT 'one_by_one',
    ADD COLUMN spread int  NOT NULL DEFAULT 0,
    ADD CONSTRAINT lots_method_check CHECK (method IN ('one_by_one', 'weighed', 'by_volume', 'guessed')),
    ADD CONSTRAINT lots_spread_check CHECK (spread BETWEEN 0 AND 100000);

COMMENT ON COLUMN lots.method IS 'How the supplier counted them.';
COMMENT ON COLUMN lots.spread IS 'Eggs more or less that 19 of 20 such counts stay within.';
