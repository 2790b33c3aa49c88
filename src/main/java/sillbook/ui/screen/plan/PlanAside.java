// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.plan.PlanNow;
import sillbook.plan.Trouble;
import sillbook.text.Width;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.words.plan.PlannedPotWords;
import sillbook.words.plan.SeekingWords;
import sillbook.words.plan.TroubleWords;

/** The two lines over the keys: what is wrong with the pot under the cursor, or with the plan, and what would cure it. */
record PlanAside(PlanPage page, State state, PlanNow now) {
    private static final String GAP = "◌";
    private static final String WRONG = "!";

    /** Of a second line under a sign. */
    private static final int INDENT = 3;

    /** With a pot under the cursor, as long as the plan has it. */
    Aside of(Optional<Integer> under) {
        if (page.typed().isPresent()) {
            return typing();
        }
        Optional<String> search =
                page.sought().isGoingOn() ? Optional.of(soFar()) : page.sought().told();
        Aside usual = usual(under.filter(number -> number < now.pots().size()));
        return search.map(words -> over(usual, words)).orElse(usual);
    }

    private Aside typing() {
        return new RuleOffers(page, state)
                .problem()
                .map(problem -> Aside.of("", "Followed as soon as it makes sense.", problem))
                .orElseGet(() -> Aside.of(
                        "", "The pots follow at once. Tab goes on, Enter goes to them.", "Nothing is kept until K."));
    }

    private Aside usual(Optional<Integer> under) {
        Optional<Trouble> own =
                under.flatMap(number -> now.troublesOf(number).stream().findFirst());
        Optional<Trouble> whole = Stream.of(bulbsShort(), now.firstGap().stream(), now.troubles().stream())
                .flatMap(some -> some)
                .findFirst();
        Optional<Trouble> said = page.isRibbon() ? own.or(() -> whole) : own;
        return said.map(this::trouble).or(() -> under.map(this::pot)).orElse(Aside.NONE);
    }

    /** What came short comes before any gap: it is what there is to plan with that is not as it was. */
    private Stream<Trouble> bulbsShort() {
        return now.troubles().stream().filter(trouble -> trouble.sort() == Trouble.Sort.BULBS_SHORT);
    }

    private Aside trouble(Trouble trouble) {
        List<String> lines = new TroubleWords(now, state.journal()).lines(trouble);
        return new Aside(trouble.sort() == Trouble.Sort.GAP ? GAP : WRONG, lines);
    }

    private Aside pot(int number) {
        return new Aside("", new PlannedPotWords(page.drawn().planning(state), now).lines(number));
    }

    private String soFar() {
        return page.sought().best().map(SeekingWords::progress).orElse(SeekingWords.GOES_ON + "; nothing found yet");
    }

    /** What is said of the search on the second line; on both where it needs them. */
    private Aside over(Aside usual, String second) {
        int indent = usual.label().isEmpty() ? 0 : INDENT;
        if (Width.of(second) > state.body().columns() - 2 - indent) {
            return Aside.of(second);
        }
        String first = usual.sentences().isEmpty() ? "" : usual.sentences().get(0);
        return Aside.of(usual.label(), first, second);
    }
}
