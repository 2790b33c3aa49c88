// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.model.Choice;
import sillbook.model.Choice.Chosen;
import sillbook.model.Choice.Mark;
import sillbook.model.Choice.SetAside;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Place;
import sillbook.model.Place.Sort;
import sillbook.model.Purchase.Money;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.model.Variety.Scent;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Suiting;
import sillbook.season.Suiting.Basis;
import sillbook.season.Suiting.Standing;
import sillbook.season.past.Candidate;
import sillbook.season.past.Choosing;
import sillbook.season.past.Reason;

class CandidateWhyTest {
    private static final Season COMING = new Season(2027);
    private static final Variety INKWELL = Variety.of(new Id<>(1, 1), "Inkwell", Kind.of("hyacinth"));
    private static final Journal JOURNAL = winter().place("cellar", Sort.CELLAR).journal();
    private static final Id<Place> CELLAR =
            JOURNAL.places().all().iterator().next().id();

    private static Candidate candidate(
            Optional<Mark> mark, Optional<Mark> before, List<Integer> scores, Reason... why) {
        return new Candidate(
                INKWELL,
                mark.map(one -> new Choice(new Id<>(2, 1), INKWELL.id(), COMING, one)),
                before.map(one -> new Choice(new Id<>(2, 2), INKWELL.id(), COMING.previous(), one)),
                scores,
                0,
                0,
                0,
                Optional.empty(),
                List.of(why));
    }

    private static Explanation explain(Candidate candidate) {
        return new CandidateWhy(JOURNAL).explain(new Choosing(COMING, List.of(candidate)), candidate);
    }

    private static Suiting suiting(Basis basis) {
        return new Suiting(Standing.FIRST, basis, Optional.empty());
    }

    static Stream<Arguments> reasons() {
        DaySpan gap = DaySpan.of(LocalDate.of(2026, 2, 21), LocalDate.of(2026, 2, 28));
        return Stream.of(
                Arguments.of(new Reason.FillsGap(gap), "▪ it flowered then, last winter nothing did"),
                Arguments.of(new Reason.DidWell(2), "▪ a mean of 4 or better in each"),
                Arguments.of(new Reason.FailedOnlyAt(CELLAR, 2), "▪ elsewhere it did not fail"),
                Arguments.of(new Reason.Floppy(2), "▪ as marked with its outcomes"),
                Arguments.of(new Reason.NeverTried(), "▪ no pot of it grew yet"),
                Arguments.of(new Reason.OnePotOnly(), "▪ too little to go by"),
                Arguments.of(new Reason.OnlyAt(CELLAR), "▪ all its pots had their cold there"),
                Arguments.of(new Reason.HasScent(Scent.STRONG), "▪ as written of the variety"),
                Arguments.of(new Reason.NeedsNoCold(), "▫ no weeks of cold for its kind"),
                Arguments.of(new Reason.SuitsPots(suiting(Basis.OWN_MARK)), "▪ by your own mark"),
                Arguments.of(new Reason.SuitsPots(suiting(Basis.HEIGHT)), "▫ by its height"),
                Arguments.of(new Reason.SuitsPots(suiting(Basis.CLASS)), "▫ by its class"),
                Arguments.of(new Reason.SuitsPots(suiting(Basis.KIND)), "▫ by its kind"),
                Arguments.of(new Reason.Cheap(new Money(20, "")), "▪ in the lowest third of your prices"));
    }

    @ParameterizedTest
    @MethodSource("reasons")
    void eachReasonStandsWithWhatItRestsOn(Reason reason, String basis) {
        List<Explanation.Line> sum = explain(candidate(Optional.empty(), Optional.empty(), List.of(), reason))
                .sum();

        assertThat(sum.get(0).what()).isEqualTo(new ReasonWords(JOURNAL).say(reason));
        assertThat(sum.get(sum.size() - 1).how()).isEqualTo(basis);
        assertThat(sum)
                .allSatisfy(line ->
                        assertThat(line.what().length() + line.how().length()).isLessThanOrEqualTo(60));
    }

    @ParameterizedTest
    @EnumSource(
            value = Basis.class,
            names = {"PACKET", "NOTHING"})
    void neitherThePacketNorNothingSpeaksForPots(Basis basis) {
        Reason reason = new Reason.SuitsPots(suiting(basis));
        assertThatThrownBy(() -> explain(candidate(Optional.empty(), Optional.empty(), List.of(), reason)))
                .hasMessageContaining(basis.toString());
    }

    @Test
    void aMeanStandsOnlyWhereThereAreScores() {
        Explanation scored = explain(candidate(Optional.empty(), Optional.empty(), List.of(4, 5, 4)));
        assertThat(scored.sum()).containsExactly(new Explanation.Line("plain mean", "of 3 scored pots", "4.33"));
        assertThat(scored.wouldChange()).singleElement().asString().startsWith("The mean is a plain one");

        Explanation untried = explain(candidate(Optional.empty(), Optional.empty(), List.of()));
        assertThat(untried.sum()).isEmpty();
        assertThat(untried.wouldChange()).singleElement().asString().startsWith("One pot of it");
    }

    @Test
    void whatComesOfItIsTheMarkThatHolds() {
        Optional<Mark> none = Optional.empty();
        assertThat(explain(candidate(none, none, List.of())).total()).isEqualTo("undecided");
        assertThat(explain(candidate(Optional.of(new Chosen(9)), Optional.of(new SetAside("")), List.of()))
                        .total())
                .isEqualTo("chosen, 9 bulbs");
        assertThat(explain(candidate(none, Optional.of(new SetAside("late")), List.of()))
                        .total())
                .isEqualTo("set aside: late");
        assertThat(explain(candidate(none, Optional.of(new Chosen(9)), List.of()))
                        .total())
                .as("another season's bulbs")
                .isEqualTo("undecided");
    }

    // The line and the foot

    @Test
    void theFootSaysThatThereIsNoMore() {
        CandidateWords bare = new CandidateWords(candidate(Optional.empty(), Optional.empty(), List.of()), JOURNAL);
        assertThat(bare.because()).isEmpty();
        assertThat(bare.score()).isEqualTo("no data");
        assertThat(bare.pots()).isEqualTo("-");
        assertThat(bare.aside()).isEqualTo("No purchase, no price and no other reason is in the book.");
    }

    @Test
    void whySetAsideComesBeforeEveryReason() {
        Reason floppy = new Reason.Floppy(2);
        CandidateWords said = new CandidateWords(
                candidate(Optional.of(new SetAside("too dear")), Optional.empty(), List.of(3, 4), floppy), JOURNAL);
        assertThat(said.because()).contains("too dear");
        assertThat(said.aside()).isEqualTo("Floppy, 2 winters.");
        assertThat(said.score()).isEqualTo("3.5");
        assertThat(said.pots()).isEqualTo("▪2");

        CandidateWords silent = new CandidateWords(
                candidate(Optional.of(new SetAside("")), Optional.empty(), List.of(), floppy), JOURNAL);
        assertThat(silent.because()).contains("floppy, 2 winters");
    }
}
