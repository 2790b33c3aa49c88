// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.app.demo.Demo;
import sillbook.exchange.logger.LoggerFile;
import sillbook.exchange.logger.Source;
import sillbook.handbook.Handbook;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.model.LoggerFormat;
import sillbook.model.Purchase;
import sillbook.model.Settings;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.Keys;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Copy;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Window;
import sillbook.ui.screen.contents.Sillbook;
import sillbook.words.list.Table;
import sillbook.words.logger.Compared;
import sillbook.words.logger.Counted;
import sillbook.words.logger.Looked;

/** The page of keys lists what each page of the program answers, asked of the pages themselves. */
class KeysPageTest {
    private static final Path PAGE = Path.of("docs/reference/keys.md");
    private static final String REMARK = "<!-- the keys: written by a test -->";
    private static final Window WINDOW = new Window(Window.SMALLEST, Alphabet.UNICODE);
    private static final LocalDate DAY = LocalDate.ofInstant(Demo.MOMENT, Demo.ZONE);
    private static final State DEMO = open(new Snapshot(Demo.journal(), DAY, 1, 0));

    private static final Map<String, Desk> PAGES = pages();
    private static final Map<String, Desk> CARDS = cards();
    private static final Map<String, Desk> SLIPS = slips();

    private static Map<String, Desk> pages() {
        Map<String, Desk> pages = new LinkedHashMap<>();
        pages.put("Today", demo());
        pages.put("Pots", demo().press("2"));
        pages.put("Places", demo().press("3"));
        pages.put("Bulbs", demo().press("4"));
        pages.put("Plan", demo().press("5"));
        pages.put("Seasons", demo().press("6"));
        pages.put("Diary", demo().press("7"));
        return pages;
    }

    private static Map<String, Desk> cards() {
        Map<String, Desk> cards = new LinkedHashMap<>();
        cards.put("A pot's card", demo().press("2", "Enter"));
        cards.put("A place's card", demo().press("3", "Enter"));
        cards.put("A variety's card", demo().press("4", "Enter"));
        cards.put("Plan, the ribbon", demo().press("5", "v"));
        cards.put("The winters on Seasons", demo().press("6", "v", "s"));
        cards.put("Choosing on Seasons", demo().press("6", "v", "c"));
        cards.put("The pots behind a line of Seasons", demo().press("6", "Enter"));
        cards.put("Bulbs, on an order", new Desk(open(ordered())).press("4", "v", "p"));
        return cards;
    }

    private static Map<String, Desk> slips() {
        Map<String, Desk> slips = new LinkedHashMap<>();
        slips.put("A round", demo().press("3", "c"));
        slips.put("What went wrong with a pot", demo().press("o", "f"));
        slips.put("A line", demo().press("l"));
        slips.put("A form", demo().press("2", "n"));
        slips.put(
                "A form with something half typed, after Esc",
                demo().press("2", "n").type("Q").press("Esc"));
        slips.put("Plan, the figures of the rule", demo().press("5", "Tab"));
        slips.put("Finding", demo().press("7", "f"));
        slips.put("Going to something", demo().press("g"));
        slips.put("Moving a pot", demo().press("2", "m"));
        slips.put("Importing a list: its file", demo().press("4", "i"));
        slips.put("Importing a list: its rows", listed());
        slips.put("Importing a thermometer's file: its name", demo().press("3", "i"));
        slips.put("Importing a thermometer's file: what it comes to", logger());
        slips.put("Why", demo().press("w"));
        slips.put("Taking back and putting back", demo().press("u"));
        slips.put("Leaving", demo().press("q"));
        slips.put("These keys", demo().press("?"));
        slips.put("Before there is a journal", firstRun());
        return slips;
    }

    private static Desk listed() {
        Table table = new Table(List.of("name", "kind"), List.of(new Table.Row(2, List.of("Bluejar", "tulip"))));
        return demo().press("4", "i").tell(new Message.TableRead("list.csv", table));
    }

    private static Desk logger() {
        Looked looked = LoggerFile.look(
                        Source.of(Path.of("docs/how-to/lists/cellar-box-later.csv")),
                        LoggerFormat.OPEN,
                        List.of(),
                        Demo.ZONE)
                .map(file -> Looked.open("box.csv", "box.csv", 1, LoggerFormat.OPEN, file.understood()))
                .value()
                .orElseThrow();
        Counted counted = new Counted(
                1,
                0,
                0,
                0,
                0,
                1,
                List.of(new Counted.Strange(9, "(Button)", Optional.empty())),
                Optional.empty(),
                new TreeMap<>(),
                List.of());
        Compared compared = new Compared(1, 0, 0, 0, 0, false, List.of());
        return demo().press("3", "i").tell(new Message.LoggerLookedAt(looked.with(counted, compared)));
    }

    private static State open(Snapshot shown) {
        Copy copy = new Copy("demo.sillbook", true, false);
        return Sillbook.open(Handbook.standard(), Desk.counting(), copy, shown, WINDOW);
    }

    /** The demo with bulbs on their way. */
    private static Snapshot ordered() {
        Journal journal = Demo.journal();
        Purchase last = journal.purchases().all().iterator().next();
        Purchase order = new Purchase(
                last.id(),
                last.variety(),
                last.season(),
                Day.on(DAY),
                30,
                last.grade(),
                last.price(),
                last.supplier(),
                last.origin(),
                last.arrival(),
                last.waits(),
                last.cooled(),
                Purchase.State.ORDERED,
                last.note());
        return new Snapshot(journal.with(List.of(new Edit.Put(order))), DAY, 1, 0);
    }

    private static Desk demo() {
        return new Desk(DEMO);
    }

    private static Desk firstRun() {
        Journal empty = Journal.empty(Settings.initial(Demo.ZONE));
        Snapshot nothing = new Snapshot(empty, DAY, 0, 0);
        return new Desk(Sillbook.firstRun(Handbook.standard(), Desk.counting(), nothing, WINDOW, "~"));
    }

    @Test
    void everyTableIsWhatThePagesAnswer() {
        Page page = Page.of(PAGE);
        List<String> lines =
                new ArrayList<>(page.lines().subList(0, page.lines().indexOf(REMARK) + 1));
        Set<Action> always = offeredByAll(Stream.of(PAGES, CARDS, SLIPS));
        Set<Action> onPages = offeredByAll(Stream.of(PAGES, CARDS));
        lines.addAll(section("Always", demo(), always));
        lines.addAll(section("On every page and card", demo(), without(onPages, always)));
        Stream.of(PAGES, CARDS)
                .forEach(some -> some.forEach(
                        (name, desk) -> lines.addAll(section(name, desk, without(actions(desk), onPages)))));
        SLIPS.forEach((name, desk) -> lines.addAll(section(name, desk, without(actions(desk), always))));

        assertThat(page.rewritten(lines).lines()).isEqualTo(lines);
    }

    private static Set<Action> offeredByAll(Stream<Map<String, Desk>> some) {
        Set<Action> all = EnumSet.allOf(Action.class);
        some.flatMap(desks -> desks.values().stream()).forEach(desk -> all.retainAll(actions(desk)));
        return all;
    }

    private static Set<Action> without(Set<Action> actions, Set<Action> others) {
        Set<Action> rest = EnumSet.copyOf(actions);
        rest.removeAll(others);
        return rest;
    }

    private static Set<Action> actions(Desk desk) {
        Set<Action> actions = EnumSet.noneOf(Action.class);
        desk.state().offers().forEach(offer -> actions.add(offer.action()));
        return actions;
    }

    private static List<String> section(String heading, Desk desk, Set<Action> wanted) {
        boolean lettersAreText = desk.state().top().reach() == Layer.Reach.FIELD;
        List<String> lines = new ArrayList<>(List.of("", "## " + heading, "", "| key | does |", "|---|---|"));
        keys(desk.state(), wanted, lettersAreText).forEach((says, keys) -> lines.add(Blocks.row(List.of(keys, says))));
        return lines;
    }

    /** From what is done to the keys that do it, in the order of the table of keys. */
    private static Map<String, String> keys(State state, Set<Action> wanted, boolean lettersAreText) {
        Map<String, String> keys = new LinkedHashMap<>();
        List<Action> offered = state.offers().stream()
                .map(Offer::action)
                .distinct()
                .filter(wanted::contains)
                .sorted()
                .toList();
        for (Action action : offered) {
            String shown = shown(state, action, lettersAreText);
            if (!shown.isEmpty()) {
                keys.merge(says(action, offered), shown, (one, more) -> one + " " + more);
            }
        }
        return keys;
    }

    /** What is told in one breath is told so only where all of it can be done. */
    private static String says(Action action, List<Action> offered) {
        boolean isWhole = Stream.of(Action.values())
                .filter(other -> other.help().equals(action.help()))
                .allMatch(offered::contains);
        return isWhole ? action.help() : action.words();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Left",
                "Right",
                "Home",
                "End",
                "Ctrl-Left",
                "Ctrl-Right",
                "Backspace",
                "Delete",
                "Ctrl-W",
                "Ctrl-U"
            })
    void aFieldTakesTheKeysThatThePageSaysItTakes(String key) {
        Field field = Field.EMPTY
                .insert("cool room")
                .press(Keys.parse("Left").orElseThrow())
                .orElseThrow();

        assertThat(field.press(Keys.parse(key).orElseThrow())).isPresent().get().isNotEqualTo(field);
        assertThat(Page.of(PAGE).text()).contains("`" + key + "`");
    }

    /** Its keys, but for those that mean something else here. */
    private static String shown(State state, Action action, boolean lettersAreText) {
        return Stream.of(action.keysShown(lettersAreText).split(" ", -1))
                .filter(key -> !key.isEmpty())
                .filter(key -> Keys.parse(key)
                        .flatMap(parsed -> Offer.find(state.offers(), parsed))
                        .filter(offer -> offer.action() != action)
                        .isEmpty())
                .map(key -> "`" + key + "`")
                .collect(joining(" "));
    }

    @Test
    void noActionOfTheTableIsWithoutAPage() {
        Set<Action> missing = EnumSet.allOf(Action.class);
        Stream.of(PAGES, CARDS, SLIPS)
                .flatMap(some -> some.values().stream())
                .forEach(desk -> missing.removeAll(actions(desk)));

        assertThat(missing).isEmpty();
    }
}
