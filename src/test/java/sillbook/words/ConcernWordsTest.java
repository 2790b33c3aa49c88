// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.model.Band;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Place.Hazard;
import sillbook.model.Purchase;
import sillbook.model.Temperature;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.DaySpan;
import sillbook.reckon.dates.Judgement;
import sillbook.reckon.dates.Warning;
import sillbook.reckon.dates.Window;
import sillbook.season.Concern;
import sillbook.season.Destination;
import sillbook.season.DryCold;
import sillbook.season.PlaceClimate.Drift;
import sillbook.season.PlaceClimate.Side;
import sillbook.season.PlaceClimate.Strayed;
import sillbook.season.PlaceClimate.Trial;
import sillbook.season.Today.Attention;
import sillbook.season.WaitingBulbs;

class ConcernWordsTest {
    private static final Journal JOURNAL = Shelves.bench().journal();
    private static final LocalDate WISH = LocalDate.of(2027, 1, 30);
    private static final Band BAND = Band.ofCelsius(2, 9);
    private static final DayCount NEED = DayCount.ofWeeks(12, 15, 17);
    private static final Window BLOOM =
            new Window(LocalDate.of(2027, 2, 1), LocalDate.of(2027, 2, 9), LocalDate.of(2027, 2, 20));

    private static Id<Place> place(String name) {
        return JOURNAL.places().all().stream()
                .filter(place -> place.name().equals(name))
                .map(Place::id)
                .findFirst()
                .orElseThrow();
    }

    static Stream<Arguments> warnings() {
        return Stream.of(
                arguments(
                        new Warning.TooLittleCold(56, 0, NEED, 84),
                        "Only 8 weeks of cold, of at least 12: buds may abort."),
                arguments(
                        new Warning.TooMuchCold(140, NEED, Optional.empty(), false),
                        "Already 20 weeks of cold: stems grow long and weak."),
                arguments(
                        new Warning.TooMuchCold(140, NEED, Optional.empty(), true),
                        "Held back for its wish it has 20 weeks of cold: stems grow long and weak."),
                arguments(new Warning.Late(WISH, BLOOM), "Late for its wish on Sat 30 Jan: flowers about 9 Feb."),
                arguments(
                        new Warning.TooLate(WISH, BLOOM),
                        "Too late for its wish on Sat 30 Jan: flowers 1 Feb at the earliest."),
                arguments(
                        new Warning.NotReachable(WISH, BLOOM, Judgement.Reason.FLOWERS_BEFORE),
                        "Its wish on Sat 30 Jan cannot be reached: flowers about 9 Feb."),
                arguments(new Warning.NoPottedCold(), "This kind needs some cold weeks in its pot, for the roots."),
                arguments(new Warning.DryCredit(84, 70), "Of 12 weeks dry cold only 10 weeks count."),
                arguments(
                        new Warning.NoCommonTime(98, 0, 84, 1),
                        "No common time: one needs 14 weeks, another bears 12 weeks."),
                arguments(
                        new Warning.ColdAndNoCold(List.of(1)),
                        "A kind that needs cold and one that needs none stand in one pot."));
    }

    @ParameterizedTest
    @MethodSource("warnings")
    void aScheduleWarnsInASentence(Warning warning, String says) {
        assertThat(new WarningWords().say(warning)).isEqualTo(says);
        assertThat(new ConcernWords(JOURNAL).say(new Concern.OfSchedule(warning)))
                .isEqualTo(says);
    }

    @Test
    void noSortOfWarningIsLeftOut() {
        Set<Object> tried = new HashSet<>();
        warnings().forEach(row -> tried.add(row.get()[0].getClass()));

        assertThat(tried).containsAll(Arrays.asList(Warning.class.getPermittedSubclasses()));
    }

    static Stream<Arguments> concerns() {
        Id<Place> fridge = place("garage fridge");
        Length shoot = new Length(900, "9 cm");
        return Stream.of(
                arguments(
                        new Concern.TooWarmHere(
                                Optional.of(place("cellar")),
                                shoot,
                                7,
                                Optional.of(new Destination(fridge, Optional.of(3)))),
                        "Shoot 9 cm, but 1 week short of cold: it is too warm here. Move it colder, do not bring it in."
                                + " The garage fridge is colder and has room for 3 more."),
                arguments(
                        new Concern.TooWarmHere(
                                Optional.empty(), shoot, 7, Optional.of(new Destination(fridge, Optional.empty()))),
                        "Shoot 9 cm, but 1 week short of cold: it is too warm here. Move it colder, do not bring it in."
                                + " The garage fridge is colder."),
                arguments(
                        new Concern.TooWarmHere(Optional.empty(), shoot, 4, Optional.empty()),
                        "Shoot 9 cm, but half a week short of cold: it is too warm here. Move it colder, do not bring"
                                + " it in."),
                arguments(
                        new Concern.TooWarmHere(Optional.empty(), shoot, 1, Optional.empty()),
                        "Shoot 9 cm, but 1 day short of cold: it is too warm here. Move it colder, do not bring it in."),
                arguments(
                        new Concern.NotCold(place("trench"), LocalDate.of(2026, 10, 15)),
                        "The trench is not cold before 15 Oct: until then nothing counts."),
                arguments(
                        new Concern.ColdEnds(place("trench"), LocalDate.of(2027, 3, 1), 14),
                        "The trench is no longer cold from 1 Mar, 2 weeks too early."),
                arguments(
                        new Concern.ColdToRoot(place("trench"), Temperature.ofCelsius(1)),
                        "The trench did not pass 1 C in its first 2 weeks: roots hardly grow so near freezing. "
                                + "Look for them before it comes in."),
                arguments(
                        new Concern.HeldBack(place("cellar"), 14, true, 91, 77, LocalDate.of(2027, 1, 26)),
                        "Held back: the cellar ran warm, 13 weeks in, about 11 cold enough; enough about Tue 26 Jan."),
                arguments(
                        new Concern.HeldBack(place("trench"), 14, false, 91, 77, LocalDate.of(2027, 1, 26)),
                        "Held back: the trench was too cold, 13 weeks in, about 11 cold enough; enough about Tue 26 Jan."),
                arguments(
                        new Concern.WarmSpell(
                                place("cellar"),
                                DaySpan.of(LocalDate.of(2026, 12, 12), LocalDate.of(2026, 12, 16)),
                                Temperature.ofCelsius(13),
                                Temperature.ofCelsius(14.8)),
                        "Warm spell: the cellar was above 13 C from 12 to 15 Dec, up to 14.8 C; watch for short stems or"
                                + " blasted buds (?)."),
                arguments(
                        new Concern.Frozen(
                                place("trench"),
                                Temperature.ofCelsius(-4),
                                LocalDate.of(2027, 1, 10),
                                LocalDate.of(2027, 1, 10),
                                Optional.of(LocalDate.of(2027, 1, 24))),
                        "The trench froze to -4 C on Sun 10 Jan: keep it cold, do not warm it. Look for softness on Sun 24 Jan"
                                + " (?)."),
                arguments(
                        new Concern.Frozen(
                                place("trench"),
                                Temperature.ofCelsius(-1),
                                LocalDate.of(2027, 1, 6),
                                LocalDate.of(2027, 1, 10),
                                Optional.empty()),
                        "The trench was down to -1 C on Wed 6 Jan, last on Sun 10 Jan: a little frost does no harm yet;"
                                + " watch it."),
                arguments(
                        new Concern.PastUseBy(LocalDate.of(2027, 1, 11)),
                        "Past its use-by day, Mon 11 Jan: stems grow long and weak."),
                arguments(
                        new Concern.BesideHazard(fridge, Hazard.FRUIT),
                        "The garage fridge holds fruit too: its gas kills the buds."),
                arguments(
                        new Concern.BesideHazard(fridge, Hazard.ROTTING_BULBS),
                        "The garage fridge holds rotting bulbs too: their gas kills the buds, take them out."),
                arguments(
                        new Concern.BesideHazard(fridge, Hazard.FUMES),
                        "The garage fridge holds fumes too: they can kill the buds, air it."),
                arguments(
                        new Concern.BesideHazard(fridge, Hazard.FOOD),
                        "The garage fridge holds food too: label the bulbs, nobody must eat them."),
                arguments(
                        new Concern.AssumedFigures(Kind.of("starflower")),
                        "The handbook does not know starflower; figures for hardy bulbs are assumed (?)."));
    }

    @ParameterizedTest
    @MethodSource("concerns")
    void aConcernIsASentence(Concern concern, String says) {
        assertThat(new ConcernWords(JOURNAL).say(concern)).isEqualTo(says);
    }

    private static WaitingBulbs dry(int days) {
        Purchase purchase = JOURNAL.purchases().all().stream()
                .filter(bulbs -> JOURNAL.varieties().get(bulbs.variety()).name().equals("Marrow Lane"))
                .findFirst()
                .orElseThrow();
        return new WaitingBulbs(purchase, 40, new DryCold(Optional.empty(), days), Optional.empty(), Optional.empty());
    }

    private static Strayed strayed(Side side, double hours) {
        return new Strayed(side, LocalDate.of(2027, 1, 10), hours, Optional.empty());
    }

    private static Drift drift(Side side) {
        return new Drift(side, 0.5, LocalDate.of(2027, 1, 16));
    }

    private static Attention frost(double lowest, int coldestOn, Optional<LocalDate> lookOn) {
        return new Attention.FrostThere(
                place("trench"),
                4,
                Temperature.ofCelsius(lowest),
                LocalDate.of(2027, 1, coldestOn),
                LocalDate.of(2027, 1, 10),
                lookOn);
    }

    private static Attention trial(int days, int inBand) {
        return new Attention.OnTrial(place("cellar"), new Trial(LocalDate.of(2026, 9, 1), days, inBand), BAND);
    }

    static Stream<Arguments> attentions() {
        return Stream.of(
                arguments(new Attention.OverRoom(place("cellar"), 22, 20), "cellar: 22 pots, room for 20"),
                arguments(
                        new Attention.BesideHazard(place("garage fridge"), 6, 0, Hazard.FRUIT),
                        "garage fridge: 6 pots beside fruit"),
                arguments(
                        new Attention.BesideHazard(place("garage fridge"), 1, 40, Hazard.FOOD),
                        "garage fridge: 1 pot and 40 dry bulbs beside food"),
                arguments(
                        new Attention.BesideHazard(place("garage fridge"), 0, 1, Hazard.FRUIT),
                        "garage fridge: 1 dry bulb beside fruit"),
                arguments(
                        new Attention.DryLong(place("garage fridge"), dry(64), LocalDate.of(2026, 12, 5)),
                        "garage fridge: 'Marrow Lane' 9 weeks dry, pot by 5 Dec"),
                arguments(
                        new Attention.Unchecked(place("trench"), LocalDate.of(2027, 1, 2), 10),
                        "trench: no round since 2 Jan"),
                arguments(new Attention.NotCold(place("trench"), 1), "trench: not cold now, 1 pot"),
                arguments(
                        new Attention.OutOfBand(
                                place("cellar"), strayed(Side.OVER, 56), BAND, Optional.of(Temperature.ofCelsius(9.6))),
                        "cellar 9.6 C, over its 2-9 C for 2 days"),
                arguments(
                        new Attention.OutOfBand(place("cellar"), strayed(Side.UNDER, 30), BAND, Optional.empty()),
                        "cellar, under its 2-9 C for 30 hours"),
                arguments(
                        new Attention.LeavingBand(place("cellar"), drift(Side.OVER), BAND),
                        "cellar warms, over its 2-9 C about Sat 16 Jan"),
                arguments(
                        new Attention.LeavingBand(place("trench"), drift(Side.UNDER), BAND),
                        "trench cools, under its 2-9 C about Sat 16 Jan"),
                arguments(new Attention.Unread(place("trench"), LocalDate.of(2027, 1, 3), 9), "trench unread 9 days"),
                arguments(
                        frost(-4, 10, Optional.of(LocalDate.of(2027, 1, 24))),
                        "trench froze to -4 C on 10 Jan, 4 pots: keep cold, look for softness 24 Jan (?)"),
                arguments(
                        frost(-9.2, 6, Optional.of(LocalDate.of(2027, 1, 24))),
                        "trench froze to -9.2 C on 6 Jan, last on 10 Jan, 4 pots: keep cold, look for softness 24 Jan (?)"),
                arguments(frost(-1, 10, Optional.empty()), "trench down to -1 C on 10 Jan, 4 pots"),
                arguments(trial(5, 5), "cellar on trial: 5 of 7 days, all in its 2-9 C"),
                arguments(trial(5, 3), "cellar on trial: 5 of 7 days, 3 in its 2-9 C"),
                arguments(trial(0, 0), "cellar on trial: no day known for 20 hours yet"),
                arguments(trial(7, 7), "cellar passed its trial: 7 days in its 2-9 C"),
                arguments(trial(9, 4), "cellar failed its trial: only 4 of 7 days in its 2-9 C"));
    }

    @ParameterizedTest
    @MethodSource("attentions")
    void aPlaceThatWantsAttentionIsNamedFirst(Attention attention, String says) {
        assertThat(new AttentionWords(JOURNAL).say(attention)).isEqualTo(says);
    }
}
