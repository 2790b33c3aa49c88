-- SPDX-License-Identifier: Apache-2.0
-- The pots of a season, those of others that are not closed, and whatever lives on in these.
CREATE TEMP TABLE current_pot AS
WITH RECURSIVE shown (pot) AS (
    SELECT id
    FROM pot
    WHERE season = ?
       OR NOT EXISTS (SELECT 1 FROM event WHERE subject_pot = pot.id AND what = 'CLOSED')
    UNION
    SELECT parent
    FROM pot
    JOIN shown ON shown.pot = pot.id
    WHERE parent IS NOT NULL
)
SELECT pot FROM shown
