-- SPDX-License-Identifier: Apache-2.0
-- What every connection is set to before anything else.
PRAGMA foreign_keys = ON;
PRAGMA trusted_schema = OFF;     -- functions with side effects do not run from the schema of a file
PRAGMA cell_size_check = ON;     -- a damaged page is noticed when it is read
PRAGMA mmap_size = 0;            -- a damaged disk is an error, not a crash
PRAGMA temp_store = MEMORY;      -- nothing of the journal lies in a shared folder
PRAGMA synchronous = FULL;       -- what is committed survives a power cut
