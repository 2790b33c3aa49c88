// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The rule for coming in, as a table.
 *
 * <p>Weeks enough, and roots at the holes or a shoot of some 4 to 8 cm. A shoot never cancels missing cold: a tall one
 * before its weeks says that the place is too warm. (Missouri Botanical Garden for the roots and the shoot of 1.5 in; a
 * consumers' association for the shoot of 5 cm; the rest is common practice.)
 */
public final class ComingIn {
    private static final Set<Roots> ANY_ROOTS = EnumSet.allOf(Roots.class);
    private static final Set<Shoot> ANY_SHOOT = EnumSet.allOf(Shoot.class);
    private static final Set<Shoot> GOOD = EnumSet.of(Shoot.RIGHT, Shoot.TALL);
    private static final Set<Shoot> NOT_GOOD = EnumSet.complementOf(EnumSet.copyOf(GOOD));

    /** Every case once. */
    public static final List<Row> TABLE = List.of(
            new Row(Weeks.SHORT, ANY_ROOTS, EnumSet.of(Shoot.TALL), Verdict.TOO_WARM),
            new Row(Weeks.SHORT, ANY_ROOTS, EnumSet.complementOf(EnumSet.of(Shoot.TALL)), Verdict.WEEKS_SHORT),
            new Row(Weeks.ENOUGH, EnumSet.of(Roots.SHOWING), ANY_SHOOT, Verdict.MAY_COME_IN),
            new Row(Weeks.ENOUGH, EnumSet.of(Roots.NONE), GOOD, Verdict.MAY_COME_IN),
            new Row(Weeks.ENOUGH, EnumSet.of(Roots.NONE), NOT_GOOD, Verdict.NO_ROOTS),
            new Row(Weeks.ENOUGH, EnumSet.of(Roots.NOBODY_LOOKED), GOOD, Verdict.MAY_COME_IN),
            new Row(Weeks.ENOUGH, EnumSet.of(Roots.NOBODY_LOOKED), NOT_GOOD, Verdict.CHECK_FIRST));

    private ComingIn() {}

    /** Whether the weeks of cold it needs are had. */
    public enum Weeks {
        SHORT,
        ENOUGH
    }

    /** Whether roots show at the holes, as far as anybody looked. */
    public enum Roots {
        NONE,
        SHOWING,
        NOBODY_LOOKED
    }

    /** How tall the shoot is, measured by what it should be, as far as anybody looked. */
    public enum Shoot {
        LOW,
        RIGHT,
        TALL,
        NOBODY_LOOKED
    }

    /** What is judged alike. */
    public record Row(Weeks weeks, Set<Roots> roots, Set<Shoot> shoot, Verdict verdict) {
        public Row {
            roots = Set.copyOf(roots);
            shoot = Set.copyOf(shoot);
        }

        public boolean covers(Weeks had, Roots seen, Shoot height) {
            return weeks == had && roots.contains(seen) && shoot.contains(height);
        }
    }

    public static Verdict judge(Weeks weeks, Roots roots, Shoot shoot) {
        return TABLE.stream()
                .filter(row -> row.covers(weeks, roots, shoot))
                .findFirst()
                .map(Row::verdict)
                .orElseThrow();
    }
}
