-- SPDX-License-Identifier: Apache-2.0
-- The readings on the other side of a step, on their way to this one.
INSERT INTO temp.crossing
SELECT place, at, temperature, source, line, flags
FROM step_reading
WHERE step = ?
