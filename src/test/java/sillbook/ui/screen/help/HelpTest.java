// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.help;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.exchange.logger.LoggerFile;
import sillbook.exchange.logger.Source;
import sillbook.model.LoggerFormat;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Layer.Reach;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.Screens;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.words.logger.Looked;

class HelpTest {
    private static Desk desk() {
        return Desk.over(GrowersWinter.withAnOrder());
    }

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    /** Every page, every card and every thing that lies over one, by the keys that lead there. */
    static Stream<String> places() {
        return Stream.of(
                "1",
                "2",
                "3",
                "4",
                "5",
                "5 v",
                "5 Tab",
                "6",
                "6 v s",
                "6 v c",
                "7",
                "2 Enter",
                "3 Enter",
                "3 Enter Down",
                "4 Enter",
                "4 v p",
                "2 Space",
                "2 z <",
                "3 c",
                "3 c m",
                "2 c",
                "2 f",
                "2 f t Enter",
                "7 f",
                "7 f t Enter",
                "g",
                "g t",
                "l",
                "l t",
                "2 n",
                "2 n t",
                "2 m",
                "a",
                "j",
                "o",
                "o o",
                "o f",
                "o f Down Down",
                "e",
                "Delete",
                "w",
                "2 v",
                "2 p",
                "2 n t Esc",
                "q",
                "u",
                ",",
                ";",
                "?");
    }

    private static Desk at(String keys) {
        return desk().press(keys.split(" "));
    }

    /** Every key a keyboard has. */
    private static List<Key> keyboard() {
        List<Key> keys = new ArrayList<>();
        IntStream.rangeClosed(' ', '~').mapToObj(Key::of).forEach(keys::add);
        IntStream.rangeClosed('a', 'z')
                .mapToObj(letter -> Key.ctrl((char) letter))
                .forEach(keys::add);
        for (Key.Name name : Key.Name.values()) {
            keys.add(Key.named(name));
            keys.add(new Key.Named(name, false, true));
        }
        return keys;
    }

    private static boolean doesSomething(State state, Key key) {
        Step step = Screens.update(state, new Message.Pressed(key));
        return !step.effects().isEmpty() || !step.state().silent().equals(state.silent());
    }

    /** A sentence in the foot is an answer too. */
    private static boolean answers(State state, Key key) {
        Step step = Screens.update(state, new Message.Pressed(key));
        return !step.effects().isEmpty() || !step.state().equals(state);
    }

    private static boolean isText(State state, Key key) {
        return state.top().type(state, key).isPresent();
    }

    private static List<Entry> help(State beneath) {
        return Help.OPEN.entries(beneath.laid(Help.OPEN));
    }

    /** What help says a key does. */
    private static Optional<Entry> entry(List<Entry> help, State state, Key key) {
        return Offer.find(state.offers(), key)
                .flatMap(offer -> help.stream()
                        .filter(entry -> entry.offers().stream().anyMatch(of -> of.action() == offer.action()))
                        .findFirst());
    }

    @ParameterizedTest
    @MethodSource("places")
    void everyKeyThatDoesSomethingStandsInHelp(String keys) {
        State state = at(keys).state();
        List<Entry> help = help(state);

        for (Key key : keyboard()) {
            if (!isText(state, key) && doesSomething(state, key)) {
                assertThat(entry(help, state, key))
                        .as("%s at %s", key.words(), keys)
                        .hasValueSatisfying(entry -> assertThat(shown(entry))
                                .as("keys of %s", entry.says())
                                .contains(key.anyCase()));
            }
        }
    }

    /** The keys meant by what an entry writes before its words; a span of keys stands for all of them. */
    private static Set<Key> shown(Entry entry) {
        Set<String> written = Set.of(entry.keys().split(" ", -1));
        return entry.offers().stream()
                .flatMap(offer -> offer.action().keys().stream()
                        .filter(key -> written.contains(key.words())
                                || written.containsAll(
                                        Set.of(offer.action().keysShown(false).split(" ", -1)))))
                .collect(Collectors.toSet());
    }

    @ParameterizedTest
    @MethodSource("places")
    void everyKeyInHelpDoesSomethingOrSaysWhyNot(String keys) {
        State state = at(keys).state();

        for (Entry entry : help(state)) {
            for (Offer offer : entry.offers()) {
                boolean works = shown(entry).stream()
                        .filter(key -> offer.action().keys().contains(key))
                        .anyMatch(key -> answers(state, key));
                boolean says = offer.off()
                        .filter(reason -> entry.reasons().contains(reason))
                        .isPresent();
                assertThat(works || says || isAtAnEnd(offer.action()))
                        .as("%s at %s", offer.action(), keys)
                        .isTrue();
            }
        }
    }

    /** A cursor in a list of one line has nowhere to go. */
    private static boolean isAtAnEnd(Action action) {
        return EnumSet.of(
                        Action.MOVE_CURSOR,
                        Action.CHOOSE,
                        Action.CHOOSE_SUGGESTION,
                        Action.HOW_FAR,
                        Action.OTHER_FIGURE)
                .contains(action);
    }

    @Test
    void looksAsDrawn() {
        Golden.check("help", desk().press("?").state());
    }

    @Test
    void looksAsDrawnWhenSearched() {
        Golden.check("help-found", desk().press("?").type("note").state());
    }

    @Test
    void aKeyThatMeansAnotherThingHereIsNotWrittenForTheFirst() {
        assertThat(all(at("3 c ?")))
                .contains("  W        wet")
                .contains("  F2       why")
                .doesNotContain("W F2");
    }

    @Test
    void everyActionIsFoundByItsWords() {
        for (Action action : Action.values()) {
            Desk searched = desk().press("?").type(action.words());
            Help help = (Help) searched.state().top();

            assertThat(help.entries(searched.state()))
                    .as("%s", action)
                    .anyMatch(entry -> entry.says().equals(action.words()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"settings", "SETT"})
    void enterDoesWhatWasFound(String sought) {
        assertThat(all(desk().press("?").type(sought).press("Enter"))).contains("Settings of this journal");
    }

    @Test
    void whatIsOffSaysWhy() {
        assertThat(all(desk().press("?"))).contains("Off just now: ").contains("R (nothing was taken back)");

        Desk chosen = desk().press("?").type("put back").press("Down");

        assertThat(chosen.line(22)).contains("Off just now: R (nothing was taken back).");
        assertThat(chosen.press("Enter").line(22)).contains(" ! Off just now: R (nothing was taken back).");
    }

    @Test
    void ofMoreReasonsThanTwoLinesHoldTheRestIsCounted() {
        Desk plan = desk().press("5", "?");

        assertThat(plan.line(22)).startsWith(" Off just now: ");
        assertThat(plan.line(23)).matches(".*\\), and \\d+ more\\.");
    }

    @Test
    void whatIsForAnotherPageSaysForWhich() {
        Desk chosen = desk().press("?").type("take in a purchase");

        assertThat(chosen.line(22)).contains("T (purchase: only on Bulbs)");
    }

    @Test
    void whatIsNotThereIsSaid() {
        assertThat(all(desk().press("?").type("zebra"))).contains("No action has 'zebra'.");
    }

    /** No key alone leads to a thermometer's file: it has to be looked at first. */
    private static Desk thermometersFile() {
        byte[] lines = "Date,Temp C\n13/11/2026 07:00,5.5\n".getBytes(UTF_8);
        Looked looked = LoggerFile.look(Source.of(lines), LoggerFormat.OPEN, List.of(), ZoneOffset.UTC)
                .map(file -> Looked.open("box.csv", "box.csv", lines.length, LoggerFormat.OPEN, file.understood()))
                .value()
                .orElseThrow();
        return desk().press("3", "i").tell(new Message.LoggerLookedAt(looked));
    }

    @Test
    void everyActionIsOfferedSomewhere() {
        EnumSet<Action> offered = EnumSet.noneOf(Action.class);
        Stream.concat(places().map(HelpTest::at), Stream.of(thermometersFile()))
                .forEach(desk -> desk.state().offers().forEach(offer -> offered.add(offer.action())));
        offered.addAll(EnumSet.of(Action.START, Action.CHOOSE, Action.COLOURS));

        assertThat(Arrays.stream(Action.values()).filter(action -> !offered.contains(action)))
                .as("keys that no page answers")
                .isEmpty();
    }

    @Test
    void fieldsKeepTheirLetters() {
        assertThat(at("2 n").state().top().reach()).isEqualTo(Reach.FIELD);
        assertThat(all(at("2 n").press(Keys.F1))).contains("F1 ").doesNotContain("? F1");
    }
}
