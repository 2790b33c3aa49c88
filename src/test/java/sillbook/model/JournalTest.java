// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sillbook.model.Edit.Put;
import sillbook.model.Edit.Remove;

/** A journal as a value. */
class JournalTest {
    private static final Settings SETTINGS = Settings.initial(ZoneOffset.UTC);
    private static final Variety INKWELL = Variety.of(new Id<>(1, 1), "Inkwell", Kind.of("hyacinth"));
    private static final Variety BLUEJAR = Variety.of(new Id<>(1, 2), "Bluejar", Kind.of("iris"));
    private static final Place CELLAR = Place.of(new Id<>(2, 1), "cellar", Place.Sort.CELLAR);
    private static final Pot H1 = pot(1, "H1", 2026);
    private static final LocalDate DAY = LocalDate.of(2026, 10, 14);

    private static Pot pot(long number, String label, int season) {
        Pot.Planting planting = new Pot.Planting(INKWELL.id(), 3, Optional.of(new Id<>(4, 1)));
        return new Pot(
                new Id<>(3, number),
                new Season(season),
                label,
                List.of(planting),
                Pot.Way.GLASS,
                Optional.of(new Id<>(5, 1)),
                Optional.empty(),
                Optional.of(new Id<>(6, 1)),
                Potting.NOT_SAID,
                Optional.of(new Id<>(7, 1)),
                Optional.of(new Id<>(3, 9)),
                "");
    }

    private static Event event(long number, Day day, int order, int minute, Happening what) {
        Instant writtenAt = Instant.EPOCH.plusSeconds(60L * minute);
        return new Event(
                new Id<>(8, number), new Subject.OfPot(H1.id()), day, order, writtenAt, Optional.empty(), what);
    }

    private static Event jotted(long number, Day day, int order, int minute) {
        return event(number, day, order, minute, new Happening.Jotted("a note"));
    }

    @Test
    void anEditMakesAnotherJournal() {
        Journal before = Journal.of(List.of(SETTINGS, INKWELL));

        Journal after = before.with(List.of(new Put(BLUEJAR), new Remove(INKWELL), new Put(CELLAR)));

        assertThat(before.varieties().all()).containsExactly(INKWELL);
        assertThat(after.varieties().all()).containsExactly(BLUEJAR);
        assertThat(after.places().find(CELLAR.id())).contains(CELLAR);
        assertThat(after.entities()).containsExactlyInAnyOrder(SETTINGS, BLUEJAR, CELLAR);
        assertThat(after.settings()).isEqualTo(SETTINGS);
    }

    @Test
    void whatComesAndGoesLeavesNothing() {
        Journal before = Journal.empty(SETTINGS);
        Journal after = before.with(List.of(new Put(INKWELL))).with(List.of(new Remove(INKWELL)));

        assertThat(after).isEqualTo(before).hasSameHashCodeAs(before).hasToString(before.toString());
        assertThat(before).isNotEqualTo(before.with(List.of(new Put(INKWELL)))).isNotEqualTo("a journal");
        assertThat(before.varieties()).isEqualTo(after.varieties()).isNotEqualTo(before.entities());
    }

    @Test
    void entriesKeepTheirOrderWhenTheyAreCorrected() {
        Variety corrected = Variety.of(INKWELL.id(), "Ninepenny Hat", INKWELL.kind());

        Journal journal = Journal.of(List.of(SETTINGS, INKWELL, BLUEJAR)).with(List.of(new Put(corrected)));

        assertThat(journal.varieties().all()).containsExactly(corrected, BLUEJAR);
        assertThat(journal.varieties().size()).isEqualTo(2);
        assertThat(journal.varieties()).hasToString(List.of(corrected, BLUEJAR).toString());
        assertThat(journal.varieties()).isEqualTo(Catalogue.of(List.of(BLUEJAR, corrected)));
    }

    @Test
    void knowsAnIdOfAnyType() {
        Journal journal = Journal.of(List.of(SETTINGS, INKWELL));

        assertThat(journal.contains(INKWELL.id())).isTrue();
        assertThat(journal.contains(CELLAR.id())).isFalse();
    }

    @Test
    void historyRunsByDayThenOrderThenWhenItWasWritten() {
        Day day = Day.on(DAY);
        List<Event> inOrder = List.of(
                jotted(9, Day.on(DAY.minusDays(1)), 7, 9),
                jotted(8, Day.about(DAY, 2), 0, 8),
                jotted(6, day, 0, 1),
                jotted(7, day, 0, 2),
                jotted(1, day, 1, 0),
                jotted(2, day, 1, 0));
        List<Entity<?>> entities = new ArrayList<>(List.of(SETTINGS, INKWELL, H1));
        List.of(3, 5, 0, 2, 4, 1).forEach(index -> entities.add(inOrder.get(index)));

        Journal journal = Journal.of(entities);

        assertThat(journal.history(H1.id())).isEqualTo(inOrder);
        assertThat(journal.history(new Subject.OfPlace(CELLAR.id()))).isEmpty();
    }

    @Test
    void findsPotsBySeasonAndLabel() {
        Pot older = pot(2, "H1", 2025);
        Journal journal = Journal.of(List.of(SETTINGS, H1, older));

        assertThat(journal.pot(new Season(2025), "h1")).contains(older);
        assertThat(journal.pot(new Season(2024), "H1")).isEmpty();
        assertThat(journal.potsOf(journal.seasonOf(DAY))).containsExactly(H1);
    }

    @Test
    void aDayThatMayHaveBeenLaterComesLater() {
        Day narrow = new Day(DAY, DAY, DAY.plusDays(1));
        assertThat(narrow).isLessThan(new Day(DAY, DAY, DAY.plusDays(2))).isGreaterThan(Day.on(DAY));
    }

    @Test
    void eachEntrySaysWhatItNames() {
        Id<Pot> pot = H1.id();
        Id<Variety> variety = INKWELL.id();
        Day day = Day.on(DAY);

        assertThat(H1.refersTo())
                .containsExactly(variety, new Id<>(4, 1), new Id<>(5, 1), new Id<>(6, 1), new Id<>(3, 9));
        assertThat(INKWELL.refersTo()).isEmpty();
        assertThat(event(1, day, 0, 0, new Happening.Moved(CELLAR.id(), Stage.COLD))
                        .refersTo())
                .containsExactly(pot, CELLAR.id());
        assertThat(new Happening.Flowered(Happening.BloomPoint.FULL_BLOOM, Optional.of(variety)).refersTo())
                .containsExactly(variety);
        assertThat(new Subject.OfSeason(H1.season()).refersTo()).isEmpty();
        assertThat(new Subject.OfVariety(variety).refersTo()).containsExactly(variety);
        assertThat(new Subject.OfPurchase(new Id<>(4, 1)).refersTo()).containsExactly(new Id<Purchase>(4, 1));
        assertThat(new SpanReading(new Id<>(9, 1), CELLAR.id(), day, day, Band.ofCelsius(2, 9)).refersTo())
                .containsExactly(CELLAR.id());
        assertThat(wish(Set.of(pot)).refersTo()).containsExactly(pot);
        assertThat(wish(Set.of(pot)).without(Set.of(pot))).isEqualTo(wish(Set.of()));
        assertThat(figure(OwnFigure.Scope.of(variety)).refersTo()).containsExactly(variety);
        assertThat(figure(OwnFigure.Scope.of(INKWELL.kind())).refersTo()).isEmpty();
    }

    private static Wish wish(Set<Id<Pot>> pots) {
        return new Wish(new Id<>(10, 1), H1.season(), DAY, DAY, "", WishedFor.one(Optional.empty()), pots, "");
    }

    private static OwnFigure figure(OwnFigure.Scope scope) {
        return new OwnFigure(new Id<>(11, 1), scope, "cold", Optional.of(OwnFigure.Range.of(14)), "");
    }

    @Test
    void aFigureForAllHardyKindsIsAHouseRule() {
        assertThat(OwnFigure.Scope.ofAllHardy().isHouseRule()).isTrue();
        assertThat(OwnFigure.Scope.of(INKWELL.id()).isHouseRule()).isFalse();
        assertThat(OwnFigure.Scope.of(INKWELL.kind()).isHouseRule()).isFalse();
    }

    @Test
    void onlyPotsThatArePottedGrow() {
        List<Happening> needing = List.of(
                new Happening.Moved(CELLAR.id(), Stage.COLD),
                new Happening.Checked(Findings.NOTHING),
                new Happening.Flowered(Happening.BloomPoint.FULL_BLOOM, Optional.empty()),
                new Happening.Cared(Happening.Care.FED));
        List<Happening> notNeeding = List.of(
                new Happening.Potted(),
                new Happening.Closed(Happening.End.SOLD, ""),
                new Happening.PutOff(JobKind.POT_UP, DAY, ""),
                new Happening.LeftOut(JobKind.POT_UP, ""),
                new Happening.Jotted("a note"));

        assertThat(needing).allMatch(Happening::needsPotting);
        assertThat(notNeeding).noneMatch(Happening::needsPotting);
    }

    @Test
    void aMixedPotHasSeveralPlantings() {
        Pot.Planting first = H1.first();
        Pot mixed = new Pot(
                H1.id(),
                H1.season(),
                "X1",
                List.of(first, new Pot.Planting(BLUEJAR.id(), 9, Optional.empty())),
                Pot.Way.BOWL,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Potting.NOT_SAID,
                Optional.empty(),
                Optional.empty(),
                "");
        assertThat(mixed.isMixed()).isTrue();
        assertThat(mixed.bulbs()).isEqualTo(12);
        assertThat(mixed.bulbsOf(BLUEJAR.id())).isEqualTo(9);
        assertThat(mixed.holds(BLUEJAR.id())).isTrue();
        assertThat(H1.holds(BLUEJAR.id())).isFalse();
        assertThat(H1.bulbsOf(BLUEJAR.id())).isZero();
        assertThat(mixed.first()).isEqualTo(first);
        assertThat(H1.isMixed()).isFalse();
    }

    @Test
    void stagesFollowOneAnother() {
        assertThat(Stage.COLD.isBefore(Stage.COOL_ROOM)).isTrue();
        assertThat(Stage.COLD.isBefore(Stage.COLD)).isFalse();
    }

    @Test
    void findingsGrowByWhatIsSeen() {
        Length shoot = Length.ofCentimetres(6);
        Length roots = Length.ofCentimetres(11);
        Findings found = Findings.NOTHING
                .withMoisture(Findings.Moisture.DRY)
                .withWatered(true)
                .withWater(Findings.Water.LOW)
                .withRootLength(roots)
                .withShoot(shoot)
                .withFirmness(Findings.Firmness.FIRM)
                .with(Findings.Growth.BUDS)
                .with(Findings.Trouble.MICE)
                .with(Findings.Trouble.FROST)
                .withNote("")
                .withNote("two bulbs gone")
                .withNote("")
                .withNote("rim gnawed");

        assertThat(found)
                .isEqualTo(new Findings(
                        Optional.of(Findings.Moisture.DRY),
                        true,
                        Optional.of(Findings.Water.LOW),
                        Optional.of(Findings.Roots.SHOWING),
                        Optional.of(roots),
                        Optional.of(shoot),
                        Optional.of(Findings.Firmness.FIRM),
                        Set.of(Findings.Growth.BUDS),
                        Set.of(Findings.Trouble.MICE, Findings.Trouble.FROST),
                        "two bulbs gone; rim gnawed"));
    }

    @Test
    void whatIsWellDependsOnTheWayOfGrowing() {
        assertThat(Findings.ALL_WELL.in(Pot.Way.DRAINED)).isEqualTo(Findings.ALL_WELL);
        assertThat(Findings.ALL_WELL.in(Pot.Way.BOWL)).isEqualTo(Findings.ALL_WELL);
        assertThat(Findings.ALL_WELL.in(Pot.Way.GLASS)).isEqualTo(Findings.WATER_WELL);
        assertThat(Findings.ALL_WELL.in(Pot.Way.PEBBLES)).isEqualTo(Findings.WATER_WELL);
        assertThat(Findings.NOTHING.in(Pot.Way.GLASS)).isEqualTo(Findings.NOTHING);
    }

    @Test
    void overWaterDryAndWetSayHowHighTheWaterStands() {
        Findings dry = Findings.NOTHING.withMoisture(Findings.Moisture.DRY).withWatered(true);

        assertThat(dry.in(Pot.Way.GLASS))
                .isEqualTo(Findings.NOTHING.withWater(Findings.Water.LOW).withWatered(true));
        assertThat(Findings.NOTHING.withMoisture(Findings.Moisture.WET).in(Pot.Way.PEBBLES))
                .isEqualTo(Findings.NOTHING.withWater(Findings.Water.HIGH));
        assertThat(dry.withWater(Findings.Water.RIGHT).in(Pot.Way.GLASS).water())
                .contains(Findings.Water.RIGHT);
    }

    @Test
    void rootsOfNoLengthAreNone() {
        assertThat(Findings.NOTHING.withRootLength(Length.ofCentimetres(0)).roots())
                .contains(Findings.Roots.NONE);
        assertThat(Findings.NOTHING.withRootLength(Length.ofCentimetres(3)).roots())
                .contains(Findings.Roots.SHOWING);
    }

    @Test
    void setsAreGoneThroughInOneOrder() {
        Findings findings = Findings.NOTHING;
        for (Findings.Trouble trouble :
                List.of(Findings.Trouble.ROT, Findings.Trouble.MICE, Findings.Trouble.OTHER, Findings.Trouble.MOULD)) {
            findings = findings.with(trouble);
        }
        assertThat(List.copyOf(findings.troubles())).isSorted();
        Set<Id<Pot>> pots = Set.of(new Id<>(3, 4), new Id<>(3, 1), new Id<>(3, 3), new Id<>(3, 2));
        assertThat(wish(pots).pots()).containsExactly(new Id<>(3, 1), new Id<>(3, 2), new Id<>(3, 3), new Id<>(3, 4));
    }
}
