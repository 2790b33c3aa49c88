-- SPDX-License-Identifier: Apache-2.0
-- The readings of a place (number) between two seconds, both in it, that are not suspicious.
SELECT at, temperature
FROM reading
WHERE place = ? AND at BETWEEN ? AND ? AND NOT flags & 1
ORDER BY at
