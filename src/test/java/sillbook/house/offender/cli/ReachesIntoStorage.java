// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.cli;

import sillbook.house.offender.store.sqlite.Cellar;

record ReachesIntoStorage(Cellar cellar) {}
