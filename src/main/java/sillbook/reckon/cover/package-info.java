// SPDX-License-Identifier: Apache-2.0
/**
 * Covering a season: on which days to bring pots in so that something is in bloom, with the room there is in the cold and on the sills. {@link sillbook.reckon.cover.Planner} is asked with a {@link
 * sillbook.reckon.cover.Task} and gives a {@link sillbook.reckon.cover.Plan}: what lacks for dated wishes, days without bloom, pots used and overlap, the first the weightiest, each with a bound.
 *
 * <p>It is hard in general: where the days in bloom of all pots make up the season exactly, to leave no gap is to sequence jobs with release times and deadlines on one machine, which is strongly NP-complete (M. R. Garey and D.
 * S. Johnson, Computers and Intractability, 1979, problem SS1). So it is bounded by Lagrangian relaxation (M. L. Fisher, Management Science 27, 1981) and sought by dynamic programming over the days, which is exact as long as
 * nothing had to be left aside for want of room to remember it.
 *
 * <p>Limits: days are whole and lengths certain; what the doubt about them does to a plan is not looked at here. Numbers in, numbers out: it must not know the journal, a clock, a file or a sentence beyond what is wrong with a
 * number.
 */
@NullMarked
package sillbook.reckon.cover;

import org.jspecify.annotations.NullMarked;
