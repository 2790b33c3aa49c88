-- SPDX-License-Identifier: Apache-2.0
-- What a day came to.
INSERT OR REPLACE INTO day_read
    (place, day, readings, known, effective, published, freezing, warm, mean, lowest, highest)
VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
