-- SPDX-License-Identifier: Apache-2.0
-- What a step took in, or took out again: of each source that it touched what was taken in last by then.
SELECT reading_place.place, taken_in.place, taken_in.number, first_at, last_at
FROM step_row
JOIN taken_in ON taken_in.number = (SELECT max(number) FROM taken_in AS earlier WHERE earlier.source = step_row.id AND earlier.step <= ?1)
JOIN reading_place ON reading_place.number = taken_in.place
WHERE step_row.step = ?1 AND step_row.table_name = 'reading_source'
