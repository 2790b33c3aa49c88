-- SPDX-License-Identifier: Apache-2.0
-- The second of the first reading of a place (number ?1, id ?2) after another (?3) that is not suspicious.
SELECT min(second)
FROM (
    SELECT (SELECT at FROM reading WHERE place = ?1 AND at > ?3 AND NOT flags & 1 ORDER BY at LIMIT 1) AS second
    UNION ALL
    SELECT min(at / 1000) FROM spot_reading WHERE place = ?2 AND at / 1000 > ?3
)
