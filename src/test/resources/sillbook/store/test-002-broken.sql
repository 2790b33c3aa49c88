-- SPDX-License-Identifier: Apache-2.0
-- A step that fails on its way.
CREATE TABLE pest (id TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO no_such_table VALUES (1);
