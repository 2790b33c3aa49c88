// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.help;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.Said;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Where;

/**
 * What can be done on the layer beneath, and by which keys; typing searches every action there is.
 *
 * @param typed what is sought
 * @param chosen the entry under the cursor; -1 before one is chosen
 */
public record Help(Field typed, int chosen) implements Layer {
    private static final int NONE = -1;

    public static final Help OPEN = new Help(Field.EMPTY, NONE);

    @Override
    public Reach reach() {
        return Reach.FIELD;
    }

    @Override
    public Look look(State state, Size body) {
        return new HelpLook(this, state).look();
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(
                Offer.byKey(Action.CHOOSE_ACTION, key -> choose(state, key)),
                Offer.of(Action.DO_IT_NOW, () -> doIt(state)).offIf(chosen < 0, "no line is chosen, Down chooses one"));
    }

    @Override
    public Optional<Step> type(State state, Key key) {
        return typed.press(key).map(field -> Step.to(state.withTop(searching(field))));
    }

    @Override
    public Step paste(State state, String text) {
        return Step.to(state.withTop(searching(typed.insert(text))));
    }

    private Help searching(Field field) {
        return new Help(field, field.isEmpty() ? NONE : 0);
    }

    /** The headings of the left column with their entries: what is here, then what holds for pots. */
    List<Group> left(State state) {
        List<Group> groups = new ArrayList<>();
        for (Where where : Where.values()) {
            if (!isEverywhere(where)) {
                group(state, heading(where), other -> other == where).ifPresent(groups::add);
            }
        }
        return groups;
    }

    /** What holds everywhere and in every list. */
    List<Group> right(State state) {
        return group(state, Where.EVERYWHERE.heading(), Help::isEverywhere).stream()
                .toList();
    }

    /** Entries under a heading. */
    record Group(String heading, List<Entry> entries) {}

    private static boolean isEverywhere(Where where) {
        return where == Where.EVERYWHERE || where == Where.LISTS;
    }

    private static String heading(Where where) {
        return where == Where.POTS ? where.heading() : "Here, " + where.place();
    }

    private static Optional<Group> group(State state, String heading, Predicate<Where> wanted) {
        State beneath = state.lifted();
        Set<Action> listed = EnumSet.noneOf(Action.class);
        List<Offer> offers = beneath.offers().stream()
                .filter(offer -> wanted.test(offer.action().where()))
                .filter(offer -> listed.add(offer.action()))
                .sorted((one, other) -> one.action().compareTo(other.action()))
                .toList();
        List<Entry> entries = Entry.of(offers, beneath);
        return entries.isEmpty() ? Optional.empty() : Optional.of(new Group(heading, entries));
    }

    /** All entries that can be chosen, in reading order. */
    List<Entry> entries(State state) {
        return typed.isEmpty() ? live(state) : found(state);
    }

    private List<Entry> live(State state) {
        List<Entry> entries = new ArrayList<>();
        left(state).forEach(group -> entries.addAll(group.entries()));
        right(state).forEach(group -> entries.addAll(group.entries()));
        return entries;
    }

    private List<Entry> found(State state) {
        List<Offer> offers = state.lifted().offers();
        return Arrays.stream(Action.values())
                .filter(action -> Entry.matches(action, typed.text().strip()))
                .map(action -> Entry.of(
                        action,
                        offers.stream()
                                .filter(offer -> offer.action() == action)
                                .findFirst()))
                .toList();
    }

    private Step choose(State state, Key key) {
        int by = key.equals(Keys.DOWN) ? 1 : -1;
        int last = entries(state).size() - 1;
        return Step.to(state.withTop(new Help(typed, Math.max(Math.min(0, last), Math.min(last, chosen + by)))));
    }

    private Step doIt(State state) {
        List<Entry> entries = entries(state);
        Entry entry = chosen < entries.size() ? entries.get(chosen) : Entry.NONE;
        return entry.offers().stream()
                .filter(Offer::isOn)
                .findFirst()
                .map(found -> found.act().apply(found.action().keys().get(0)))
                .orElseGet(() -> Step.to(state.saying(Said.problem("Off just now: " + entry.reasons() + "."))));
    }
}
