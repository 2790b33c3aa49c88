-- SPDX-License-Identifier: Apache-2.0
-- The windows of a pot, unless the step they were kept with is taken back.
SELECT pot, stage, made_on, earliest, likely, latest, basis
FROM kept_window
JOIN step ON step.number = kept_window.step
WHERE pot = ? AND NOT step.taken_back
ORDER BY step, position
