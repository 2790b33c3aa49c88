-- SPDX-License-Identifier: Apache-2.0
-- A step that loses what other entries refer to.
DELETE FROM variety;
