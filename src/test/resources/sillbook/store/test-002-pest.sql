-- SPDX-License-Identifier: Apache-2.0
-- A second form, for tests of the way there only: one more table, and one rebuilt with a column more.
CREATE TABLE pest (
    id   TEXT NOT NULL PRIMARY KEY, -- an id
    name TEXT NOT NULL -- text
) STRICT;

CREATE TABLE new_container (
    id             TEXT    NOT NULL PRIMARY KEY, -- an id
    name           TEXT    NOT NULL, -- text
    shape          TEXT    NOT NULL, -- its shape
    across         INTEGER, -- inside width at bulb depth, 0.1 mm
    across_written TEXT, -- as written
    height         INTEGER, -- inside height, 0.1 mm
    height_written TEXT, -- as written
    stock          INTEGER NOT NULL, -- how many there are
    unwashed       INTEGER NOT NULL, -- how many of those not in use want washing
    note           TEXT    NOT NULL, -- text
    glazed         INTEGER NOT NULL DEFAULT 0 -- 1 when it is
) STRICT;
INSERT INTO new_container
SELECT id, name, shape, across, across_written, height, height_written, stock, unwashed, note, 0
FROM container;
DROP TABLE container;
ALTER TABLE new_container RENAME TO container;
