// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.change.Change;
import sillbook.change.Check;
import sillbook.change.Jot;
import sillbook.model.Findings;
import sillbook.model.Findings.Firmness;
import sillbook.model.Findings.Growth;
import sillbook.model.Findings.Moisture;
import sillbook.model.Findings.Roots;
import sillbook.model.Findings.Trouble;
import sillbook.model.Id;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.model.Pot;
import sillbook.model.Pot.Way;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.season.Winter;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.State;
import sillbook.words.line.Bench;
import sillbook.words.line.QuickLine;

/** In the cellar of the grower's winter stand D2, H4, H8 to H22 and T4, each on a line, the batch on one. */
class RoundPageTest {
    private final Desk desk = cellar();

    private static Desk cellar() {
        return round(Desk.over(GrowersWinter.told().journal()), "cellar");
    }

    private static Desk round(Desk desk, String name) {
        return desk.lay(RoundPage.of(place(desk.state(), name)));
    }

    private static Place place(State state, String name) {
        return state.journal().places().all().stream()
                .filter(place -> place.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Id<Pot> pot(Desk desk, String label) {
        return desk.state().journal().pot(new Season(2026), label).orElseThrow().id();
    }

    private static Change kept(Desk desk) {
        return ((Effect.CarryOut) desk.press("Enter").effects().get(0)).change();
    }

    /** What would be written of a pot if the round were closed now. */
    private Findings found(String label) {
        RoundPage page = (RoundPage) desk.state().top();
        Findings found = page.whose().change(desk.state(), page.marks()).found().get(pot(desk, label));
        return Objects.requireNonNull(found);
    }

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    /** What the line shown reads as. */
    private static Optional<Change> read(Desk desk) {
        State state = desk.state();
        RoundPage page = (RoundPage) state.top();
        String line = page.whose().line(state, page.marks());
        Bench bench = new Bench(
                state.journal(),
                state.almanac().outlook(),
                state.kit().handbook(),
                state.kit().ids());
        return QuickLine.read(line, bench).change();
    }

    @Test
    void looksAsDrawn() {
        desk.press("9", "Down", "d", "Down", "Space", "Down", "Down", "Down", "m", "Down", "m", "Space", "Up", "Up");

        Golden.check("round", desk.state());
    }

    @Test
    void opensWithNothingMarked() {
        Golden.check("round-unmarked", desk.state());
    }

    @Test
    void enterAtOnceSaysThatAllAreWell() {
        Check check = (Check) kept(desk);

        assertThat(check.round()).contains(place(desk.state(), "cellar").id());
        assertThat(check.found().keySet())
                .containsExactlyElementsOf(desk.state()
                        .almanac()
                        .outlook()
                        .standingAt(check.round().orElseThrow()));
        assertThat(check.found().values()).containsOnly(Findings.ALL_WELL);
    }

    @Test
    void dryIsWateredOnTheSpot() {
        assertThat(desk.press("d").line(6)).contains("dry, watered");
        assertThat(found("D2").moisture()).contains(Moisture.DRY);
        assertThat(found("D2").watered()).isTrue();
        assertThat(found("H4")).isEqualTo(Findings.ALL_WELL);
    }

    @Test
    void wetAndDryPutEachOtherOut() {
        desk.press("d", "w");

        assertThat(found("D2")).isEqualTo(Findings.ALL_WELL.withMoisture(Moisture.WET));
    }

    @Test
    void rootsAndNoRootsPutEachOtherOut() {
        desk.press("n", "r");
        assertThat(found("D2").roots()).contains(Roots.SHOWING);
        desk.press("n");
        assertThat(found("D2").roots()).contains(Roots.NONE);
    }

    @Test
    void signsAndTroublesAddUp() {
        desk.press("b", "c", "m", "i", "f");

        assertThat(found("D2").growth()).containsExactlyInAnyOrder(Growth.BUDS, Growth.COLOUR);
        assertThat(found("D2").troubles()).containsExactlyInAnyOrder(Trouble.MOULD, Trouble.MICE, Trouble.FROST);
    }

    @ParameterizedTest
    @CsvSource({"d", "w", "r", "n", "m", "i", "f", "b", "c"})
    void theSameKeyUnmarks(String key) {
        assertThat(desk.press(key).line(21)).contains("17 well, 1 marked");
        assertThat(desk.press(key).line(21)).contains("18 well, 0 marked");
        assertThat(found("D2")).isEqualTo(Findings.ALL_WELL);
    }

    @ParameterizedTest
    @CsvSource({"9,9 cm", "1 2,12 cm", "1 2 3,3 cm", "9 r 7,7 cm", "1 1,11 cm", "0,0 cm"})
    void digitsAreTheHeightOfTheShoot(String keys, String height) {
        desk.press(keys.split(" "));

        assertThat(desk.line(6)).contains("shoot " + height);
        assertThat(found("D2").shoot()).map(Length::written).contains(height);
    }

    @ParameterizedTest
    @CsvSource({"9 Down Up 9", "1 2 Backspace", "9 r r Backspace"})
    void theHeightIsTakenAwayAgain(String keys) {
        assertThat(found("D2")).isEqualTo(Findings.ALL_WELL);
        desk.press(keys.split(" "));

        assertThat(found("D2")).isEqualTo(Findings.ALL_WELL);
    }

    @Test
    void otherTroubleIsInTheGrowersWords() {
        desk.press("t").type("leaning, \"soft\"  stem").press("Enter");

        assertThat(desk.line(6)).contains("leaning, 'soft' stem");
        assertThat(found("D2").troubles()).containsExactly(Trouble.OTHER);
        assertThat(found("D2").note()).isEqualTo("leaning, 'soft' stem");
        assertThat(desk.press("t").line(21)).contains("18 well, 0 marked");
    }

    @Test
    void troubleWithoutWordsIsStillTrouble() {
        desk.press("t", "Enter");

        assertThat(desk.line(6)).contains(" trouble ");
        assertThat(read(desk)).contains(kept(desk));
    }

    @Test
    void halfWrittenTroubleIsNotLostByEsc() {
        desk.press("t").type("leaning").press("Esc");

        assertThat(all(desk)).contains("Leave it half done?");
        assertThat(all(desk.press("Esc"))).contains("leaning");
    }

    @Test
    void aRoundMayBeOfAnotherDay() {
        desk.press("d", "a").type("10 jan").press("Enter");

        assertThat(desk.line(4)).contains("Sun 10 Jan 2027");
        assertThat(desk.line(6)).contains("dry, watered");
        assertThat(all(desk)).contains("10 Jan");
        Optional<Change> written = read(desk);
        Check check = (Check) kept(desk);
        assertThat(written).contains(check);
        assertThat(check.day().likely()).isEqualTo(LocalDate.of(2027, 1, 10));
    }

    @Test
    void theDayOfARoundHasBeen() {
        desk.press("a").type("+2");
        assertThat(all(desk)).contains("! still to come");
        assertThat(all(desk.press("Enter"))).contains("Looked at on");
        desk.press("Backspace", "Backspace").type("soonish");
        assertThat(all(desk.press("Enter"))).contains("Looked at on");
        desk.press("Esc");
        assertThat(all(desk)).contains("Leave it half done?");
    }

    @Test
    void asAboveTakesTheMarksOfTheLineAbove() {
        assertThat(desk.press("=").line(22)).contains("no line is above");

        desk.press("r", "9", "Down", "=");

        assertThat(found("H4")).isEqualTo(found("D2")).isNotEqualTo(Findings.ALL_WELL);
    }

    @Test
    void aBatchIsMarkedAsOneUntilItIsOpened() {
        desk.press("Down", "Down", "m");
        assertThat(desk.line(21)).contains("3 well, 15 marked");

        desk.press("Space");
        assertThat(desk.line(8)).startsWith("▸ ✓ H8 ").contains(" mould ");
        desk.press("m", "Space");

        assertThat(desk.line(8)).contains("H8-H22").contains("mould: H9-H22");
        assertThat(desk.press("m").line(8)).doesNotContain("mould:").contains("mould");
        assertThat(desk.press("m").line(21)).contains("18 well, 0 marked");
    }

    @Test
    void onePotIsNoBatch() {
        assertThat(desk.press("Space").line(22)).isEqualTo(" ! Open batch is off just now: this is one pot.");
    }

    @Test
    void theFootSaysHowThePotWouldStandWithItsMarks() {
        String before = desk.line(22) + desk.line(23);

        desk.press("1", "9");

        assertThat(desk.line(22) + desk.line(23)).isNotEqualTo(before).contains("Shoot 19 cm");
    }

    @Test
    void escNeverLosesMarksUnasked() {
        desk.press("m", "Esc");
        assertThat(all(desk)).contains("Leave it half done?");

        desk.press("Enter");
        assertThat(desk.state().layers().over()).isEmpty();
        round(desk, "cellar");
        assertThat(desk.line(6)).contains("mould");

        desk.press("Esc", "x");
        assertThat(round(desk, "cellar").line(6)).doesNotContain("mould");
    }

    @Test
    void escLeavesAtOnceWhereNothingIsMarked() {
        assertThat(desk.press("Esc").state().layers().over()).isEmpty();
    }

    @Test
    void closedItIsOneStepAndNoDraftIsLeft() {
        desk.press("m", "Enter");
        assertThat(desk.effects()).hasSize(1);
        desk.tell(new Message.Kept(
                "round of cellar, 18 pots.", false, desk.state().shown()));

        assertThat(desk.state().layers().over()).isEmpty();
        assertThat(desk.state().layers().drafts()).isEmpty();
        assertThat(desk.line(23)).isEqualTo(" round of cellar, 18 pots. U takes it back.");
    }

    @Test
    void aNoteIsJottedOnThePotAndTheRoundGoesOn() {
        desk.press("m", "j").type("flat sides, to the rim");
        Jot jot = (Jot) kept(desk);
        desk.tell(new Message.Kept("jotted.", false, desk.state().shown()));

        assertThat(jot.text()).isEqualTo("flat sides, to the rim");
        assertThat(desk.line(6)).contains("mould");
    }

    @Test
    void marksOfPotsThatWentElsewhereGoWithThem() {
        desk.press("m");
        desk.tell(new Message.Changed(Desk.over(
                        GrowersWinter.told().then("D2").moved("12 jan", "porch").journal())
                .state()
                .shown()));

        assertThat(desk.line(6)).startsWith("▸   H4");
        assertThat(desk.line(21)).contains("17 well, 0 marked");
    }

    @Test
    void whereNothingStandsAnyMoreNothingCanBeKept() {
        Desk empty = round(Desk.over(winter().place("cellar", Sort.CELLAR).journal()), "cellar");

        assertThat(empty.press("Enter").line(22)).contains("nothing stands here any more");
        assertThat(empty.press("m").state().unkept()).isEmpty();
    }

    /** A fridge on 12 January with a pot in the cold and bulbs of two varieties that wait dry, one of them long. */
    private static Desk fridge() {
        Winter told = winter().place("fridge", Sort.FRIDGE)
                .pot("H1", "Inkwell", "hyacinth")
                .potted("12 oct", "fridge")
                .pot("T1", "Marrow Lane", "tulip")
                .bought("1 nov", "fridge")
                .pot("T2", "Tuesday Coat", "tulip")
                .bought("5 jan", "fridge")
                .felt("9 jan");
        return round(Desk.over(told.journal()), "fridge");
    }

    @Test
    void dryBulbsAreFeltInTheSameRound() {
        Desk fridge = fridge().press("r", "Down", "s");

        Golden.check("round-dry-bulbs", fridge.state());
        Check check = (Check) kept(fridge);
        assertThat(check.felt().values())
                .containsExactly(Findings.DRY_WELL.withFirmness(Firmness.SOFT), Findings.DRY_WELL);
        assertThat(check.found()).hasSize(1);
        assertThat(read(fridge)).contains(check);
    }

    @Test
    void ofDryBulbsNothingIsMarkedThatOnlyAPotCanBe() {
        Desk fridge = fridge().press("r", "7", "m", "Down", "d");
        assertThat(fridge.line(22)).contains("these bulbs are not potted yet");
        assertThat(fridge.press("j").line(22)).contains("these bulbs are not potted yet");
        fridge.press("=");
        assertThat(((Check) kept(fridge)).felt().values())
                .containsExactly(Findings.DRY_WELL.with(Trouble.MOULD), Findings.DRY_WELL);
    }

    @Test
    void theTroubleOfDryBulbsIsWrittenInWords() {
        Desk fridge = fridge().press("Down", "t");
        fridge.type("smells odd").press("Enter");
        assertThat(all(fridge)).contains("Marrow Lane bulbs trouble").contains("smells odd");
        Optional<Change> line = read(fridge);
        assertThat(line).contains(kept(fridge));
        assertThat(all(fridge().press("Down", "t").type("smells odd").press("Enter", "t")))
                .doesNotContain("smells odd");
    }

    /** A shed with one pot of each way of growing: a bowl, a drained pot, a glass, pebbles. */
    private static Desk shed() {
        Winter told = winter().place("shed", Sort.CELLAR)
                .pot("B1", "Penny Gloaming", "crocus")
                .grown(Way.BOWL)
                .potted("12 oct", "shed")
                .pot("D1", "Lantern Row", "daffodil")
                .potted("12 oct", "shed")
                .pot("G1", "Inkwell", "hyacinth")
                .grown(Way.GLASS)
                .potted("12 oct", "shed")
                .saw("2 jan", new Winter.Look(Findings.WATER_WELL.withRootLength(Length.ofCentimetres(4))))
                .pot("P1", "Linen Parade", "paperwhite")
                .grown(Way.PEBBLES)
                .potted("12 oct", "shed");
        return round(Desk.over(told.journal()), "shed");
    }

    @Test
    void eachWayOfGrowingHasItsKeysAndWords() {
        Desk shed = shed().press("d", "Down", "d", "Down", "d", "k", "r", "1", "2", "4", "Down", "w", "Up");

        Golden.check("round-by-way", shed.state());
        Check line = (Check) read(shed).orElseThrow();
        assertThat(inTheirWay(line, shed)).isEqualTo(inTheirWay((Check) kept(shed), shed));
    }

    /** As it is kept. */
    private static List<Findings> inTheirWay(Check check, Desk desk) {
        return check.found().entrySet().stream()
                .map(each -> each.getValue()
                        .in(desk.state().journal().pots().get(each.getKey()).way()))
                .toList();
    }

    @Test
    void ofAGlassTheLengthOfTheRootsIsTypedAfterThem() {
        Desk shed = shed().press("Down", "Down", "r", "7");
        assertThat(all(shed)).contains("roots 7 cm");
        shed.press("Down", "Up", "3");
        assertThat(all(shed)).contains("roots 7 cm, shoot 3 cm");
        shed.press("r");
        assertThat(all(shed)).doesNotContain("roots 7 cm").contains("shoot 3 cm");
        shed.press("r", "n", "5");
        assertThat(all(shed)).contains("no roots, shoot 5 cm");
    }

    @ParameterizedTest
    @CsvSource({"0, r", "0, n", "0, k", "1, k", "3, r"})
    void whatCannotBeSeenInAWayOfGrowingIsNotMarked(int down, String key) {
        Desk shed = shed();
        for (int i = 0; i < down; i++) {
            shed.press("Down");
        }
        assertThat(shed.press(key).line(22)).contains("it cannot be seen in this way of growing");
    }

    @Test
    void inInchesTheShootIsInInches() {
        Winter told = GrowersWinter.told();
        Settings cm = told.journal().settings();
        Settings inches = new Settings(
                cm.zone(), cm.seasonStart(), cm.temperatures(), Settings.LengthUnit.INCHES, cm.colours(), true);
        Desk inInches = Desk.over(new Snapshot(told.journal(), Desk.TODAY, 0, 0).withSettings(inches));
        round(inInches, "cellar").press("4");

        assertThat(all(inInches)).contains("0-9 shoot in inches").contains("D2 4 in");
        assertThat(read(inInches)).contains(kept(inInches));
    }

    @Test
    void somePotsAreLookedAtWithoutARound() {
        Desk some = Desk.over(GrowersWinter.told().journal());
        some.lay(RoundPage.of(some.state(), List.of(pot(some, "T4"), pot(some, "S1"), pot(some, "H4"))));
        some.press("r", "6");

        assertThat(some.line(4)).startsWith(" Check  H4 S1 T4, 3 pots, Tue 12 Jan 2027");
        assertThat(all(some)).contains("the same as a line:  H4 S1 moist, T4 moist, roots, 6 cm");
        Check check = (Check) kept(some);
        assertThat(check.round()).isEmpty();
        assertThat(read(some)).contains(check);
    }

    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    private static final List<String> KEYS = List.of(
            "d",
            "w",
            "r",
            "n",
            "m",
            "i",
            "f",
            "b",
            "c",
            "1",
            "4",
            "9",
            "0",
            "Down",
            "Down",
            "Up",
            "Space",
            "=",
            "Backspace",
            "t");
    private static final List<String> WORDS =
            List.of("", "leaning", "grey spots", "soft; smells, a bit", "it's short", "frost (old)", "roots out");

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theLineReadsAsTheSameChange(int seed) {
        Random random = new Random(seed);
        Desk any = round(Desk.over(GrowersWinter.told().journal()), seed % 2 == 0 ? "cellar" : "garage fridge");
        for (int i = 0; i < 12; i++) {
            any.press(KEYS.get(random.nextInt(KEYS.size())));
            if (any.state().top() instanceof TroubleSlip) {
                any.type(WORDS.get(random.nextInt(WORDS.size()))).press("Enter");
            }
        }

        assertThat(read(any)).as(all(any)).contains(kept(any));
    }

    @Test
    void aPlaceWhoseNameHasACommaIsStillRead() {
        Desk attic = round(
                Desk.over(winter().place("attic, north side", Sort.CELLAR)
                        .pot("T1", "Tuesday Coat", "tulip")
                        .potted("2 jan", "attic, north side")
                        .journal()),
                "attic, north side");

        assertThat(read(attic.press("m"))).contains(kept(attic));
    }

    @Test
    void whatToBewareOfAtThePlaceStandsOverWhatIsLookedAt() {
        Winter told = winter().place("pantry", Sort.FRIDGE)
                .beside(Hazard.FOOD, Hazard.FRUIT)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 nov", "pantry");

        Golden.check("round-hazards", round(Desk.over(told.journal()), "pantry").state());
    }

    @Test
    void ofVeryManyCautionsTheCardSaysTheRest() {
        Winter told = winter().place("pantry", Sort.FRIDGE)
                .beside(Hazard.values())
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 nov", "pantry");

        assertThat(round(Desk.over(told.journal()), "pantry").lines())
                .anyMatch(line -> line.contains("more of this on the card of the place"))
                .anyMatch(line -> line.contains("T1  'Tuesday Coat'"));
    }
}
