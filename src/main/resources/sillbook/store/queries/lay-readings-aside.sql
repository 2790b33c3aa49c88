-- SPDX-License-Identifier: Apache-2.0
-- What is on this side of a step (?1) and goes to the other: all that its source (?5) brought to the place (?2) between two seconds (?3, ?4), and what stands
-- where something comes back.
INSERT INTO step_reading (step, place, at, temperature, source, line, flags)
SELECT ?1, place, at, temperature, source, line, flags
FROM reading
WHERE place = ?2
  AND at BETWEEN ?3 AND ?4
  AND (source = ?5 OR EXISTS (SELECT 1 FROM temp.crossing WHERE crossing.place = reading.place AND crossing.at = reading.at))
