-- SPDX-License-Identifier: Apache-2.0
INSERT INTO kept_window (step, pot, stage, made_on, earliest, likely, latest, basis)
VALUES (?, ?, ?, ?, ?, ?, ?, ?)
