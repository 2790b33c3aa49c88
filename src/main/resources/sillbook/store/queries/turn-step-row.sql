-- SPDX-License-Identifier: Apache-2.0
-- The journal went over the step, so what was here is now on the other side.
UPDATE step_row
SET other = ?, parts = ?
WHERE step = ? AND position = ?
