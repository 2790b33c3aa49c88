// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Place.Sort;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.plan.Planning;
import sillbook.plan.Seeking;
import sillbook.season.Outlook;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;

class SeekerTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 8, 20);
    private static final Season SEASON = new Season(2026);

    private final List<Message> told = new ArrayList<>();
    private final Seeker seeker = new Seeker();

    private static Planning planning(int sorts) {
        Journal journal = winter().place("cellar", Sort.CELLAR)
                .room(40)
                .place("sill", Sort.WARM_SILL)
                .room(4)
                .journal();
        List<Edit> edits = new ArrayList<>();
        for (int sort = 1; sort <= sorts; sort++) {
            Variety variety = Variety.of(new Id<>(80, sort), "Novelty " + sort, Kind.of("tulip"));
            edits.add(new Edit.Put(variety));
            edits.add(new Edit.Put(
                    Purchase.of(new Id<>(81, sort), variety.id(), SEASON, Day.on(TODAY), 20, Purchase.State.IN_HAND)));
        }
        Journal bought = journal.with(edits);
        return Planning.of(bought, Outlook.of(bought, Handbook.standard(), TODAY), SEASON);
    }

    static Effect.Seek seek(int turn, int sorts) {
        Planning planning = planning(sorts);
        return new Effect.Seek(turn, planning, planning.usualRule());
    }

    static boolean isProven(Message end) {
        return ((Seeking.Best) ((Message.Sought) end).outcome()).found().isProven();
    }

    @Test
    void whatIsFoundComesWithItsTurn() {
        Message.Sought end = (Message.Sought) seeker.seek(seek(3, 1), told::add);
        assertThat(end.turn()).isEqualTo(3);
        assertThat(end.outcome()).isInstanceOf(Seeking.Best.class);
        assertThat(told)
                .isNotEmpty()
                .allSatisfy(message ->
                        assertThat(((Message.FoundSoFar) message).turn()).isEqualTo(3));
    }

    @Test
    void stoppedItEndsWithTheBestSoFar() {
        Optional<Message> end = Optional.of(seeker.seek(seek(1, 12), message -> {
            told.add(message);
            seeker.stop(1);
        }));
        Seeking.Found best = ((Seeking.Best) ((Message.Sought) end.get()).outcome()).found();
        assertThat(told).hasSize(1);
        assertThat(best.pots()).isNotEmpty();
    }

    @Test
    void stoppedBeforeItBeganItEndsAtOnceAndTheNextGoesOn() {
        seeker.stop(1);
        Message.Sought end = (Message.Sought) seeker.seek(seek(1, 12), told::add);
        assertThat(isProven(end)).isFalse();
        assertThat(told).hasSizeLessThanOrEqualTo(1);
        assertThat(isProven(seeker.seek(seek(2, 1), told::add))).isTrue();
    }

    @Test
    void anOlderSearchThatBeginsLateEndsItselfAndNotTheNewer() {
        List<Message> older = new ArrayList<>();
        Message newer = seeker.seek(seek(2, 1), message -> {
            if (older.isEmpty()) {
                older.add(seeker.seek(seek(1, 12), ignored -> {}));
                seeker.stop(1);
            }
        });
        assertThat(older).hasSize(1).noneMatch(SeekerTest::isProven);
        assertThat(isProven(newer)).isTrue();
    }

    @Test
    void closedItSeeksNoMore() {
        seeker.close();
        assertThat(isProven(seeker.seek(seek(7, 12), told::add))).isFalse();
    }

    @Test
    void anotherSearchEndsTheOneBefore() {
        List<Message> second = new ArrayList<>();
        Message first = seeker.seek(seek(1, 12), message -> {
            told.add(message);
            if (second.isEmpty()) {
                second.add(seeker.seek(seek(2, 1), ignored -> {}));
            }
        });
        assertThat(told).as("told no more once another began").hasSize(1);
        assertThat(((Message.Sought) first).turn()).isEqualTo(1);
        assertThat(((Message.Sought) second.get(0)).turn()).isEqualTo(2);
    }
}
