// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;

/**
 * Everything a key can do, in one table. Foot, help and the documentation's page of keys are written from it; what an action does,
 * and when it is off, stands with the layer that offers it.
 */
public enum Action {
    OPEN_PAGE(Where.EVERYWHERE, "1 2 3 4 5 6 7", "1-7", "page", "pages"),
    TODAY_ON_RULER(Where.EVERYWHERE, "0", "today", "today on the ruler"),
    SEASON_BEFORE(Where.EVERYWHERE, "<", "season before", "season before, after"),
    SEASON_AFTER(Where.EVERYWHERE, ">", "season after", "season before, after"),
    MOVE_CURSOR(Where.LISTS, "Up Down PgUp PgDn Home End", "Up Down", "choose", "line; PgUp PgDn, Home End"),
    PAN(Where.LISTS, "Left Right", "Left", "pan", "four weeks back; Right on"),
    WRITE_LINE(Where.EVERYWHERE, "L", "line", "write a line: T1-T6 cool room"),
    BACK(Where.EVERYWHERE, "Esc", "back", "back, one level at a time"),
    WHY(Where.EVERYWHERE, "W F2", "why", "why: figures, rule, source"),
    TAKE_BACK(Where.EVERYWHERE, "U", "take back", "take back, put back; asks"),
    PUT_BACK(Where.EVERYWHERE, "R", "put back", "take back, put back; asks"),
    SETTINGS(Where.EVERYWHERE, ",", "settings", "settings of this journal"),
    NEW_WISH(Where.EVERYWHERE, ";", "wish", "wish for a flower on a day"),
    FIND(Where.LISTS, "F", "find", "find on this page"),
    GO_TO(Where.EVERYWHERE, "G", "go to", "go to a label, name or day"),
    VIEW(Where.LISTS, "V", "view", "view or order, zoom"),
    ZOOM(Where.LISTS, "Z", "zoom", "view or order, zoom"),
    KEYS(Where.EVERYWHERE, "? F1", "keys", "these keys"),
    LEAVE(Where.EVERYWHERE, "Q Ctrl-C", "leave", "leave; all is kept"),
    REDRAW(Where.EVERYWHERE, "Ctrl-L", "draw again", "draw again"),
    SUSPEND(Where.EVERYWHERE, "Ctrl-Z", "to the shell", "to the shell and back"),

    PICK(Where.LISTS, "Space", "pick", "pick this one, pick by rule"),
    PICK_BY_RULE(Where.LISTS, "P", "pick by rule", "pick this one, pick by rule"),

    NEW_POT(Where.POTS, "N", "new pot", "new pot"),
    SAME_AGAIN(Where.POTS, "S", "same again", "same again"),
    MOVE(Where.POTS, "M", "move", "move to a place or stage"),
    CHECK(Where.POTS, "C", "check", "check; on a place, a round"),
    ANOTHER_DAY(Where.POTS, "A", "another day", "another day, or not at all"),
    JOT(Where.POTS, "J", "jot", "jot a note"),
    OUTCOME(Where.POTS, "O", "outcome", "outcome; done; what failed"),
    CORRECT(Where.POTS, "E", "correct", "correct"),
    REMOVE(Where.POTS, "Delete", "remove", "remove; a pot asks for its label"),

    CHOOSE_VARIETY(Where.VARIETIES, "C", "choose", "choose for the coming season; again: undecided"),
    SET_ASIDE(Where.VARIETIES, "X", "set aside", "set aside for the coming season; again: undecided"),

    DO_JOB(Where.TODAY, "Enter", "do it", "do the job; start the round"),
    OPEN_CARD(Where.POTS_PAGE, "Enter", "card", "the pot's card"),
    NEW_PLACE(Where.PLACES, "N", "new place", "new place"),
    IMPORT_READINGS(Where.PLACES, "I", "import", "import a thermometer's file"),
    OPEN_PLACE(Where.PLACES, "Enter", "place", "the place's card"),
    TAKE_READING(Where.PLACES, "T", "reading", "write a temperature: cellar 5, cellar 3 to 8"),
    OPEN_VARIETY(Where.BULBS, "Enter", "variety", "the variety's card"),
    ARRIVED(Where.BULBS, "Enter", "arrived", "what was ordered has come"),
    NEW_VARIETY(Where.BULBS, "N", "new", "new variety"),
    NEW_PURCHASE(Where.BULBS, "T", "purchase", "take in a purchase"),
    IMPORT_LIST(Where.BULBS, "I", "import", "import a list from a file"),
    OPEN_POTS(Where.SEASONS, "Enter", "the pots", "the pots behind the line"),
    OPEN_WINTER(Where.SEASONS, "Enter", "the winter", "the winter of the line, a fact a line"),
    HOW_MANY(Where.CHOOSING, "+ - ] [", "how many", "one bulb more, fewer; five more, five fewer"),
    HAND_ON(Where.CHOOSING, "H", "hand on", "hand on all that is chosen: to order, on Bulbs"),
    RULE_FIELDS(Where.PLAN, "Tab", "rule", "how many pots, every how many days, from when to when"),
    OPEN_PLANNED(Where.PLAN, "Enter", "pot", "the pot's days and places, to be changed"),
    NUDGE_DAY(Where.PLAN, "+ -", "a day", "a day later, a day earlier"),
    NUDGE_WEEK(Where.PLAN, "[ ]", "a week", "a week earlier, a week later"),
    SEEK_BEST(Where.PLAN, "B", "best", "the best plan; again: stop, with the best so far"),
    KEEP_PLAN(Where.PLAN, "K", "keep", "keep the plan as it is shown, one step"),
    ADOPT_PLAN(Where.PLAN, "T", "adopt", "take the plan up: its pots wait to be potted; asks"),
    PLANS(Where.PLAN, "P", "plans", "the plans of the season side by side"),
    SUPPLIES(Where.PLAN, "I", "supplies", "what the plan takes, and what is to be bought"),
    PLAN_POT(Where.PLAN, "N", "pot", "by hand: one pot more, of bulbs in none"),
    PLAN_WISH(Where.PLAN, "N", "wish", "in the ribbon: what should flower when"),
    OPEN_ENTRY(Where.DIARY, "Enter", "open", "open what the entry is about"),
    LIST_FOUND(Where.LISTS, "Enter", "list", "to what was found"),
    CHOOSE_ACTION(Where.HELP, "Up Down", "choose", "choose a line"),
    DO_IT_NOW(Where.HELP, "Enter", "do it now", "do it now"),

    MARK_DRY(Where.ROUND, "D", "dry", "dry, and watered; over water: low, and topped up"),
    MARK_WET(Where.ROUND, "W", "wet", "wet; over water: high"),
    MARK_ROOTS(Where.ROUND, "R", "roots", "roots at the holes; in a glass digits after it are their length"),
    MARK_NO_ROOTS(Where.ROUND, "N", "no roots", "no roots yet"),
    MARK_SHOOT(Where.ROUND, "0 1 2 3 4 5 6 7 8 9", "0-9", "shoot", "height of the shoot, two digits"),
    MARK_MOULD(Where.ROUND, "M", "mould", "mould"),
    MARK_MICE(Where.ROUND, "I", "mice", "mice"),
    MARK_FROST(Where.ROUND, "F", "frost", "frost"),
    MARK_CLOUDY(Where.ROUND, "K", "cloudy", "cloudy water, and changed"),
    MARK_SOFT(Where.ROUND, "S", "soft", "a bulb feels soft"),
    MARK_BUDS(Where.ROUND, "B", "buds", "buds"),
    MARK_COLOUR(Where.ROUND, "C", "colour", "colour shows"),
    MARK_TROUBLE(Where.ROUND, "T", "trouble", "other trouble, in your words"),
    DAY_OF_ROUND(Where.ROUND, "A", "another day", "another day than today, on which the look was taken"),
    UNMARK(Where.ROUND, "Backspace", "unmark", "take all marks of this line away"),
    AS_ABOVE(Where.ROUND, "=", "as above", "the marks of the line above"),
    OPEN_BATCH(Where.ROUND, "Space", "open batch", "open a batch into its pots"),
    CLOSE_ROUND(Where.ROUND, "Enter", "close round", "all well, but for what is marked"),

    CONFIRM_CAUSE(Where.FAILED, "Enter", "confirm", "confirm the cause, or leave it open"),
    MARK_FOUND(Where.FAILED, "Space", "sign, roots", "mark it; the same again unmarks"),
    CHOOSE_FOUND(Where.FAILED, "Left Right", "choose", "another sign, or word for roots"),

    NEXT_POT(Where.CARD, "PgUp PgDn", "next pot", "the pot before, the next pot"),

    CHOOSE_SUGGESTION(Where.FIELDS, "Up Down", "choose", "choose a suggestion"),
    TAKE_SUGGESTION(Where.FIELDS, "Tab Enter", "take it", "take the suggestion; Tab goes on"),
    NEXT_BLANK(Where.FIELDS, "Tab Shift-Tab Down Up", "Tab Down", "next", "next blank; Shift-Tab Up before"),
    RECORD(Where.FIELDS, "Enter", "record", "record, or go to what is missing"),

    PUT_RIGHT(Where.IMPORT, "Enter", "correct", "correct what was understood"),
    KEEP_READINGS(Where.IMPORT, "K", "keep it, one step", "keep the readings, one step"),
    STRANGE_LINES(Where.IMPORT, "V", "lines", "the lines that are suspicious or unreadable, and back"),

    CHOOSE(Where.SLIPS, "Up Down PgUp PgDn Home End", "Up Down", "choose", "choose; PgUp PgDn, Home End"),
    AGREE(Where.SLIPS, "Enter", "agree", "agree"),
    START(Where.FIRST_RUN, "Enter", "go", "begin, see the demo, or open a journal"),
    COLOURS(Where.FIRST_RUN, "1 2 3", "colours", "dark, light, or no colours"),

    HOW_FAR(Where.SLIPS, "Up Down", "how far", "how far back, or forward"),
    HANDBOOKS(Where.SLIPS, "H", "handbook's", "the handbook's figure, or your pots' again"),
    OTHER_FIGURE(Where.SLIPS, "Left Right Up Down", "other figure", "another figure of the same line"),
    DROP(Where.SLIPS, "X", "drop it", "drop what is half typed"),
    ;

    private static final Set<Key> PAIRED = Set.of(Keys.UP, Keys.LEFT, Keys.PAGE_UP, Key.of('+'), Key.of('['));

    private final Where where;

    /** Unmodifiable, of records. */
    @SuppressWarnings("ImmutableEnumChecker") // an immutable list is no type of its own in java.base
    private final List<Key> keys;

    private final String keysInHelp;
    private final String words;
    private final String help;

    Action(Where where, String keys, String words, String help) {
        this(where, keys, "", words, help);
    }

    /** As help writes its keys, where they are too many to list. */
    Action(Where where, String keys, String keysInHelp, String words, String help) {
        this.where = where;
        this.keysInHelp = keysInHelp;
        this.keys = Stream.of(keys.split(" ", -1))
                .map(name -> Keys.parse(name).orElseThrow().anyCase())
                .toList();
        this.words = words;
        this.help = help;
    }

    public Where where() {
        return where;
    }

    /** The keys that mean this action; letters in lower case stand for either. */
    public List<Key> keys() {
        return keys;
    }

    /** In a word or two, as the foot says it. */
    public String words() {
        return words;
    }

    /** As help says it; actions told in one breath share a line. */
    public String help() {
        return help;
    }

    /** Its keys as help writes them; where letters are text, only those that still work. */
    public String keysShown(boolean lettersAreText) {
        return keysShown(key -> works(key, lettersAreText));
    }

    /** As help writes those of its keys that work; may be empty. */
    public String keysShown(Predicate<Key> works) {
        boolean allWork = keys.stream().allMatch(works);
        return allWork && !keysInHelp.isEmpty()
                ? keysInHelp
                : keys.stream().filter(works).map(Key::words).collect(joining(" "));
    }

    /** Its keys as the foot writes them: the first, or the first two when they go opposite ways. */
    String keysInFoot(boolean lettersAreText) {
        List<Key> live = live(lettersAreText).toList();
        boolean pair = !live.isEmpty() && PAIRED.contains(live.get(0));
        return live.stream().limit(pair ? 2 : 1).map(Key::words).collect(joining(" "));
    }

    private Stream<Key> live(boolean lettersAreText) {
        return keys.stream().filter(key -> works(key, lettersAreText));
    }

    private static boolean works(Key key, boolean lettersAreText) {
        return !(lettersAreText && key instanceof Key.Typed);
    }
}
