-- SPDX-License-Identifier: Apache-2.0
-- A reading as it is before a step (?1) changes it, unless the step brought it itself (source ?4).
INSERT OR IGNORE INTO step_reading (step, place, at, temperature, source, line, flags)
SELECT ?1, place, at, temperature, source, line, flags
FROM reading
WHERE place = ?2 AND at = ?3 AND source <> ?4
