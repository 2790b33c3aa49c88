-- SPDX-License-Identifier: Apache-2.0
-- Takes away what was laid aside for a step (?1), of a place (?2) between two seconds (?3, ?4).
DELETE FROM reading
WHERE place = ?2
  AND at BETWEEN ?3 AND ?4
  AND EXISTS (SELECT 1 FROM step_reading
              WHERE step_reading.step = ?1 AND step_reading.place = reading.place AND step_reading.at = reading.at)
