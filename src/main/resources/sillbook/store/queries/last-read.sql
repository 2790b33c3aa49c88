-- SPDX-License-Identifier: Apache-2.0
-- The last reading of a place (number ?1, id ?2) that is not suspicious: milliseconds, and put right as the sums of its days are.
SELECT moment, temperature + coalesce((SELECT correction FROM day_basis WHERE place = ?2), 0)
FROM (
    SELECT *
    FROM (
        SELECT at * 1000 AS moment, temperature
        FROM reading
        WHERE place = ?1 AND NOT flags & 1
        ORDER BY at DESC
        LIMIT 1
    )
    UNION ALL
    SELECT at, temperature
    FROM spot_reading
    WHERE place = ?2
)
ORDER BY moment DESC
LIMIT 1
