-- SPDX-License-Identifier: Apache-2.0
-- What the journal must not say, and the columns cannot forbid: a sentence for each finding.

-- There are the settings.
SELECT 'The settings are missing.'
WHERE NOT EXISTS (SELECT 1 FROM settings)

UNION ALL
-- A label is given once in a season.
SELECT 'The label ' || label || ' is given to ' || count(*) || ' pots of the season that begins in ' || season || '.'
FROM pot
WHERE label <> ''
GROUP BY season, lower(label)
HAVING count(*) > 1

UNION ALL
-- Something is planted in a pot.
SELECT 'Nothing is planted in the pot ' || label || ' of the season that begins in ' || season || '.'
FROM pot
WHERE NOT EXISTS (SELECT 1 FROM planting WHERE pot = pot.id)

UNION ALL
-- A plant that lives on is older in the pot it came from.
SELECT 'The plant in pot ' || heir.label || ' of the season that begins in ' || heir.season
       || ' is said to come from ' || parent.label || ', which is not of an earlier season.'
FROM pot AS heir
JOIN pot AS parent ON parent.id = heir.parent
WHERE parent.season >= heir.season

UNION ALL
-- Steps are taken back from the last one on.
SELECT 'The step ''' || name || ''' is in force, though one before it is taken back.'
FROM step
WHERE NOT taken_back
  AND number > (SELECT min(number) FROM step WHERE taken_back)

UNION ALL
-- A window is in order.
SELECT 'A kept window of ' || made_on || ' is not in order: ' || earliest || ', ' || likely || ', ' || latest || '.'
FROM kept_window
WHERE earliest > likely OR likely > latest

UNION ALL
-- A reading has its place, and what it was taken in from.
SELECT 'Readings from ' || datetime(min(at), 'unixepoch') || ' to ' || datetime(max(at), 'unixepoch') || ' are of no known place or source.'
FROM reading
WHERE place NOT IN (SELECT number FROM reading_place)
   OR source NOT IN (SELECT number FROM taken_in JOIN reading_source ON reading_source.id = taken_in.source)
HAVING count(*) > 0

UNION ALL
-- A thermometer is the only one of its place.
SELECT 'The place ' || name || ' has ' || count(*) || ' thermometers.'
FROM thermometer
JOIN place ON place.id = thermometer.place
GROUP BY thermometer.place
HAVING count(*) > 1
