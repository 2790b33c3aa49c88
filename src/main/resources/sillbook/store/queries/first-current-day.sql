-- SPDX-License-Identifier: Apache-2.0
-- The first day of anything that happened to the pots that are shown, but not before a day (?1).
SELECT coalesce(max(?1, min(coalesce(day_earliest, day))), ?1)
FROM event
WHERE subject_pot IN (SELECT pot FROM temp.current_pot)
