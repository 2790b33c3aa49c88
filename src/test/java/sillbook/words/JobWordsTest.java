// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Place.Sort;
import sillbook.model.Pot;
import sillbook.model.Pot.Way;
import sillbook.model.Stage;
import sillbook.model.Wish;
import sillbook.reckon.dates.Window;
import sillbook.season.BatchShare;
import sillbook.season.Concern;
import sillbook.season.Deadline;
import sillbook.season.Destination;
import sillbook.season.Due;
import sillbook.season.Job;
import sillbook.season.Outlook;
import sillbook.season.Readiness;
import sillbook.season.Route;
import sillbook.season.Verdict;
import sillbook.season.Winter;

class JobWordsTest {
    private static final LocalDate TODAY = Shelves.TODAY;
    private static final LocalDate YESTERDAY = TODAY.minusDays(1);

    private final Journal journal = Shelves.bench().journal();
    private final JobWords words = new JobWords(journal, TODAY);
    private final List<Id<Pot>> pots =
            List.of(journal.pot(Shelves.SEASON, "T4").orElseThrow().id());

    private Optional<Id<Place>> place(String name) {
        return journal.places().all().stream()
                .filter(place -> place.name().equals(name))
                .map(Place::id)
                .findFirst();
    }

    private Job.OfPots job(JobKind kind, Due due, String from, String to, Optional<Verdict> verdict) {
        return job(kind, due, from, to, verdict, new Deadline.UseBy(YESTERDAY));
    }

    private Job.OfPots job(
            JobKind kind, Due due, String from, String to, Optional<Verdict> verdict, Deadline deadline) {
        return new Job.OfPots(
                kind,
                pots,
                Optional.empty(),
                Window.on(TODAY),
                TODAY.plusDays(3),
                due,
                Optional.of(deadline),
                new Route(
                        place(from), place(to).map(there -> new Destination(there, Optional.empty())), Stage.WARM_ROOM),
                verdict.map(
                        judged -> new Readiness(judged, TODAY, Optional.empty(), Optional.empty(), Optional.empty())),
                Optional.empty(),
                Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({
        "BRING_IN,       TODAY, cellar, MAY_COME_IN, bring into cool room",
        "BRING_IN,       LATE,  cellar, MAY_COME_IN, bring into cool room",
        "BRING_IN,       READY, cellar, MAY_COME_IN, may come in",
        "BRING_IN,       TODAY, cellar, CHECK_FIRST, bring in; check first",
        "BRING_IN,       SOON,  cellar, CHECK_FIRST, 'ready, if rooted'",
        "BRING_IN,       LATER, cellar, MAY_COME_IN, ready",
        "BRING_IN,       TODAY, trench, CHECK_FIRST, lift; check first",
        "BRING_IN,       TODAY, trench, MAY_COME_IN, lift; bring in",
        "PAST_BLOOM,     TODAY, cellar, ,            past bloom: done?",
        "POT_UP,         TODAY, cellar, ,            'pot up, warm room'",
        "MOVE_TO_WARMTH, TODAY, cellar, ,            move to warm room",
    })
    void aJobIsSaidByWhatItAsksFor(JobKind kind, Due due, String from, Verdict verdict, String says) {
        assertThat(words.what(job(kind, due, from, "", Optional.ofNullable(verdict))))
                .isEqualTo(says);
    }

    @ParameterizedTest
    @CsvSource({
        "TODAY, cellar, stair window, to stair window",
        "TODAY, cellar, '',           cellar",
        "READY, cellar, stair window, cellar",
        "TODAY, '',     '',           ''",
    })
    void itIsSaidWhereToOrWhere(Due due, String from, String to, String says) {
        assertThat(words.where(job(JobKind.BRING_IN, due, from, to, Optional.empty())))
                .isEqualTo(says);
    }

    @ParameterizedTest
    @CsvSource({
        "LATE,  1 day late",
        "READY, use by 11 Jan",
        "TODAY, ''",
        "SOON,  Fri 15 Jan",
        "LATER, Fri 15 Jan",
    })
    void itIsSaidByWhen(Due due, String says) {
        assertThat(words.when(job(JobKind.BRING_IN, due, "cellar", "", Optional.empty())))
                .isEqualTo(says);
    }

    @Test
    void theLastDayForAWishIsNoUseByDay() {
        Wish wish = Shelves.after(List.of("wish T4 30 jan")).journal().wishes().all().stream()
                .findFirst()
                .orElseThrow();

        assertThat(words.when(job(
                        JobKind.BRING_IN,
                        Due.READY,
                        "cellar",
                        "",
                        Optional.empty(),
                        new Deadline.ForWish(YESTERDAY, wish))))
                .isEqualTo("wish by 11 Jan");
    }

    @Test
    void aPartedBatchIsCounted() {
        Map<Stage, Integer> counts = new EnumMap<>(Stage.class);
        counts.put(Stage.COLD, 15);
        counts.put(Stage.COOL_ROOM, 3);
        counts.put(Stage.WARM_ROOM, 1);
        counts.put(Stage.IN_BLOOM, 2);
        BatchShare batch = new BatchShare(new Id<>(1, 1), pots, counts);

        assertThat(JobWords.counts(batch, "in ")).isEqualTo("15 in cold, 3 in cool, 1 in warm, 2 in bloom");
        assertThat(JobWords.counts(batch, "")).isEqualTo("15 cold, 3 cool, 1 warm, 2 in bloom");
        Job.OfPots ready = job(JobKind.BRING_IN, Due.READY, "cellar", "", Optional.empty());
        Job.OfPots whole = new Job.OfPots(
                ready.kind(),
                ready.pots(),
                Optional.of(batch),
                ready.window(),
                ready.on(),
                ready.due(),
                ready.deadline(),
                ready.route(),
                ready.readiness(),
                ready.heldBack(),
                ready.putOff());
        assertThat(words.what(whole)).isEqualTo("15 in cold, 3 in cool, 1 in warm, 2 in bloom");
    }

    @ParameterizedTest
    @CsvSource({
        "SOON,  true,  held back: ran warm",
        "LATER, false, held back: too cold",
        "TODAY, true,  bring into cool room",
        "SOON,  ,      ready",
    })
    void aDaysListSaysWhyAPotComesLate(Due due, @Nullable Boolean ranWarm, String says) {
        Job.OfPots plain = job(JobKind.BRING_IN, due, "cellar", "", Optional.of(Verdict.MAY_COME_IN));
        Job.OfPots job = new Job.OfPots(
                plain.kind(),
                plain.pots(),
                plain.batch(),
                plain.window(),
                plain.on(),
                plain.due(),
                plain.deadline(),
                plain.route(),
                plain.readiness(),
                Optional.ofNullable(ranWarm)
                        .map(warm -> new Concern.HeldBack(
                                place("cellar").orElseThrow(), 14, warm, 91, 77, TODAY.plusDays(3))),
                plain.putOff());
        assertThat(words.inList(job)).isEqualTo(says);
    }

    @ParameterizedTest
    @CsvSource({
        "DRAINED, DRAINED, moist? roots? shoot?",
        "BOWL,    BOWL,    moist? shoot?",
        "GLASS,   GLASS,   water? roots? shoot?",
        "PEBBLES, PEBBLES, water? shoot?",
        "DRAINED, GLASS,   moist? water? roots? shoot?",
        "BOWL,    PEBBLES, moist? water? shoot?",
    })
    void aRoundAsksWhatCanBeSeenInTheWaysThatStandThere(Way one, Way other, String asks) {
        Winter winter = Winter.winter()
                .place("cellar", Sort.CELLAR)
                .pot("T1", "Tuesday Coat", "tulip")
                .grown(one)
                .potted("1 oct", "cellar")
                .pot("T2", "Tuesday Coat", "tulip")
                .grown(other)
                .potted("1 oct", "cellar");
        Outlook outlook = winter.on("14 oct");
        Job.Round round = outlook.today().checks().get(0);

        assertThat(new JobWords(winter.journal(), outlook.day()).asks(round)).isEqualTo(asks);
    }

    @Test
    void aRoundAsksAndSaysWhenItWasLast() {
        Job.Round round = new Job.Round(
                place("cellar").orElseThrow(),
                pots,
                List.of(),
                10,
                LocalDate.of(2027, 1, 2),
                Window.on(TODAY),
                TODAY,
                Due.TODAY,
                Optional.empty(),
                List.of(),
                false);

        assertThat(words.asks(round)).isEqualTo("moist? roots? shoot?");
        assertThat(JobWords.last(round)).isEqualTo("last  2 Jan");
        assertThat(words.places(
                        List.of(place("cellar").orElseThrow(), place("trench").orElseThrow())))
                .isEqualTo("cellar, trench");
    }

    @Test
    void potsHaveLabelsAndNames() {
        PotNames names = new PotNames(Shelves.after(List.of("Marrow Lane x3, Inkwell x1, cellar, 1 oct, label M1"))
                .journal());
        Id<Pot> mixed = names.journal().pot(Shelves.SEASON, "M1").orElseThrow().id();
        Id<Pot> plain = names.journal().pot(Shelves.SEASON, "T4").orElseThrow().id();

        assertThat(names.name(mixed)).isEqualTo("'Marrow Lane' +1");
        assertThat(names.nameAndCount(List.of(plain))).isEqualTo("'Marrow Lane' x5");
        assertThat(names.labelAndName(List.of(plain))).isEqualTo("T4 'Marrow Lane'");
        assertThat(names.labels(List.of(plain, mixed))).isEqualTo("M1 T4");
        assertThat(names.place(place("cellar").orElseThrow())).isEqualTo("cellar");
    }
}
