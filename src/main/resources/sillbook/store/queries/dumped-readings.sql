-- SPDX-License-Identifier: Apache-2.0
-- Every reading by place and instant. Which of several sources that agree it was first taken in from is nothing that the journal says.
SELECT json_array(reading_place.place, at, temperature, flags)
FROM reading
JOIN reading_place ON reading_place.number = reading.place
ORDER BY reading_place.place, at
