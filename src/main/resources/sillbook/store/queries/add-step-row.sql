-- SPDX-License-Identifier: Apache-2.0
-- An entry that a step touched, as it is on the other side of the step.
INSERT INTO step_row (step, position, table_name, id, other, parts)
VALUES (?, ?, ?, ?, ?, ?)
