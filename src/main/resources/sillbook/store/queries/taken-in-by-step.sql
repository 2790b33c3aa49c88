-- SPDX-License-Identifier: Apache-2.0
-- What a step took in.
SELECT reading_place.place, taken_in.place, taken_in.number, first_at, last_at
FROM taken_in
JOIN reading_place ON reading_place.number = taken_in.place
WHERE step = ?
