-- SPDX-License-Identifier: Apache-2.0
-- What a step touched, in the order it did.
SELECT position, table_name, id, other, parts
FROM step_row
WHERE step = ?
ORDER BY position
