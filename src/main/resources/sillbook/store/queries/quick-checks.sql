-- SPDX-License-Identifier: Apache-2.0
-- What is wrong with tables that hold readings or the files they are from (?1 is 1), or with all others (0); 'ok' of each that is sound.
SELECT quick_check
FROM sqlite_schema
JOIN pragma_quick_check(name)
WHERE type = 'table' AND (name IN ('reading', 'step_reading', 'original')) = ?1
