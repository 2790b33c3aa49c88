// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.failed;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Failure;
import sillbook.model.Failure.Roots;
import sillbook.model.Failure.Sign;
import sillbook.ui.draw.Field;

/**
 * What is marked of a failed pot so far.
 *
 * @param sign which of the signs Space marks
 * @param roots which word for roots Space marks
 */
record Marking(Set<Sign> signs, Optional<Roots> found, Field cutBud, int sign, int roots) {
    static final List<Sign> SIGNS = List.of(Sign.values());
    static final List<Roots> ROOTS = List.of(Roots.values());

    Marking {
        signs = Set.copyOf(signs);
    }

    static Marking of(Failure failure) {
        return new Marking(failure.signs(), failure.roots(), Field.of(failure.cutBud()), 0, 0);
    }

    /** The same places, with other findings. */
    Marking with(Failure failure) {
        return new Marking(failure.signs(), failure.roots(), Field.of(failure.cutBud()), sign, roots);
    }

    Marking withCutBud(Field typed) {
        return new Marking(signs, found, typed, sign, roots);
    }

    /** The next sign to the left or to the right. */
    Marking signBy(int step) {
        return new Marking(signs, found, cutBud, Math.floorMod(sign + step, SIGNS.size()), roots);
    }

    Marking rootsBy(int step) {
        return new Marking(signs, found, cutBud, sign, Math.floorMod(roots + step, ROOTS.size()));
    }

    /** That sign marked, or no longer. */
    Marking signToggled() {
        Set<Sign> changed = EnumSet.noneOf(Sign.class);
        changed.addAll(signs);
        if (!changed.remove(SIGNS.get(sign))) {
            changed.add(SIGNS.get(sign));
        }
        return new Marking(changed, found, cutBud, sign, roots);
    }

    /** Only one word fits the roots; the same again takes it away. */
    Marking rootsToggled() {
        Optional<Roots> word = Optional.of(ROOTS.get(roots));
        return new Marking(signs, found.equals(word) ? Optional.empty() : word, cutBud, sign, roots);
    }

    /** As it is written down, the cause left open. */
    Failure failure() {
        return new Failure(signs, found, cutBud.text(), Optional.empty());
    }
}
