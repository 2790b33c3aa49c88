-- SPDX-License-Identifier: Apache-2.0
-- The same with those that were typed (place number ?1, id ?2, seconds ?3 to ?4); of one second the mean.
SELECT second, CAST(round(avg(temperature)) AS INTEGER)
FROM (
    SELECT at AS second, temperature
    FROM reading
    WHERE place = ?1 AND at BETWEEN ?3 AND ?4 AND NOT flags & 1
    UNION ALL
    SELECT at / 1000, temperature
    FROM spot_reading
    WHERE place = ?2 AND at / 1000 BETWEEN ?3 AND ?4
)
GROUP BY second
ORDER BY second
