-- SPDX-License-Identifier: Apache-2.0
-- The readings of a place (number ?1, id ?2) in a stretch of time (milliseconds, from ?3 up to ?4), in order.
SELECT at * 1000 AS moment, temperature, flags, name, line
FROM reading
JOIN taken_in ON taken_in.number = reading.source
JOIN reading_source ON reading_source.id = taken_in.source
WHERE reading.place = ?1 AND at >= (?3 + 999) / 1000 AND at < (?4 + 999) / 1000
UNION ALL
SELECT at, temperature, 0, '', 0
FROM spot_reading
WHERE place = ?2 AND at >= ?3 AND at < ?4
ORDER BY moment
