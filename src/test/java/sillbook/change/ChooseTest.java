// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Choice;
import sillbook.model.Choice.Chosen;
import sillbook.model.Choice.Mark;
import sillbook.model.Choice.SetAside;
import sillbook.model.Choice.Undecided;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Season;

class ChooseTest {
    private static final Season NEXT = Bench.WINTER.next();

    private final Bench bench = new Bench();

    private static Choose mark(Season season, Mark mark) {
        return new Choose(Bench.MARROW_LANE.id(), season, mark);
    }

    private Optional<Mark> marked(Season season) {
        return bench.journal.choice(Bench.MARROW_LANE.id(), season).map(Choice::mark);
    }

    @Test
    void theStepSaysWhatIsMeantWithIt() {
        assertThat(bench.done(mark(NEXT, new Chosen(10))).name())
                .isEqualTo("'Marrow Lane' chosen for 2027-28, 10 bulbs");
        assertThat(bench.done(mark(NEXT, new Chosen(1))).name()).isEqualTo("'Marrow Lane' chosen for 2027-28, 1 bulb");
        assertThat(bench.done(mark(NEXT, new SetAside("floppy two winters"))).name())
                .isEqualTo("'Marrow Lane' set aside for 2027-28: floppy two winters");
        assertThat(bench.done(mark(NEXT, new SetAside(""))).name()).isEqualTo("'Marrow Lane' set aside for 2027-28");
        assertThat(bench.done(mark(NEXT, new Undecided())).name())
                .isEqualTo("'Marrow Lane' undecided again for 2027-28");
    }

    @Test
    void aSeasonHasOneMarkOfAVariety() {
        bench.done(mark(NEXT, new Chosen(10)));
        bench.done(mark(NEXT, new SetAside("")));
        bench.done(mark(NEXT, new Chosen(12)));

        assertThat(bench.journal.choices().all())
                .singleElement()
                .extracting(Choice::mark)
                .isEqualTo(new Chosen(12));
    }

    @Test
    void otherSeasonsKeepTheirMarks() {
        bench.done(mark(Bench.WINTER, new SetAside("too tall")));
        bench.done(mark(NEXT, new Chosen(10)));

        assertThat(marked(Bench.WINTER)).contains(new SetAside("too tall"));
        assertThat(marked(NEXT)).contains(new Chosen(10));
    }

    @Test
    void undecidedTakesTheMarkOff() {
        Journal before = bench.journal;
        bench.done(mark(NEXT, new Chosen(10)));
        bench.done(mark(NEXT, new Undecided()));

        assertThat(bench.journal).isEqualTo(before);
    }

    @Test
    void undecidedOverrulesAMarkOfAnEarlierSeason() {
        bench.done(mark(Bench.WINTER, new SetAside("too tall")));
        bench.done(mark(NEXT, new Undecided()));

        assertThat(marked(NEXT)).contains(new Undecided());
        assertThat(marked(Bench.WINTER)).contains(new SetAside("too tall"));
    }

    @Test
    void whatHasNoMarkCannotLoseIt() {
        String none = "'Marrow Lane' has no mark for 2027-28 that could be taken off.";
        assertThat(bench.refused(mark(NEXT, new Undecided()))).isEqualTo(none);
        bench.done(mark(NEXT.next(), new Chosen(10)));
        assertThat(bench.refused(mark(NEXT, new Undecided()))).isEqualTo(none);
    }

    @Test
    void aVarietyTakesItsMarksWithIt() {
        bench.done(mark(Bench.WINTER, new SetAside("")));
        bench.done(mark(NEXT, new Chosen(10)));
        bench.done(new Remove(Bench.MARROW_LANE));

        assertThat(bench.journal.choices().isEmpty()).isTrue();
        assertThat(bench.journal.varieties().contains(Bench.MARROW_LANE.id())).isFalse();
    }

    @Test
    void aVarietyThatIsGoneIsNotChosen() {
        assertThat(bench.refused(new Choose(new Id<>(9, 9), NEXT, new Chosen(1))))
                .isEqualTo(Bench.GONE);
    }
}
