-- SPDX-License-Identifier: Apache-2.0
-- The windows of a pot, unless the step they were kept with is taken back.
SELECT pot, stage, made_on, earliest, likely, latest, basis
FROM kept_window
LEFT JOIN step ON step.number = kept_window.step
WHERE pot = ? AND step.taken_back IS NOT TRUE
ORDER BY kept_window.number
