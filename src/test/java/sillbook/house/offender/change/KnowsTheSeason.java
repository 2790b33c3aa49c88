// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.change;

import sillbook.house.offender.season.Standing;

record KnowsTheSeason(Standing standing) {}
