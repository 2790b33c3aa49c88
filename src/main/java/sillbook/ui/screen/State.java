// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.ui.draw.Size;

/**
 * Everything a picture of the screen rests on.
 *
 * @param shown the journal as last told
 * @param almanac what is true of it
 * @param picked pots picked to be acted on together, in the order they were picked
 * @param said the sentence in the foot
 * @param layersAfterAnswer while something is being kept: how many layers stay over the page once it is
 */
public record State(
        Kit kit,
        Copy copy,
        Snapshot shown,
        Almanac almanac,
        Window window,
        Layers layers,
        Set<Id<Pot>> picked,
        Timescale timescale,
        Optional<Said> said,
        OptionalInt layersAfterAnswer) {

    public State {
        picked = Collections.unmodifiableSet(new LinkedHashSet<>(picked));
    }

    /** A book just opened, nothing done in it yet. */
    public static State open(Kit kit, Copy copy, Snapshot shown, Window window, Layers layers) {
        return new State(
                kit,
                copy,
                shown,
                almanac(kit, shown),
                window,
                layers,
                Set.of(),
                Timescale.of(shown.season()),
                Optional.empty(),
                OptionalInt.empty());
    }

    private static Almanac almanac(Kit kit, Snapshot shown) {
        return new Almanac(shown.journal(), kit.handbook(), shown.today());
    }

    public Journal journal() {
        return shown.journal();
    }

    /** How large the page's body is, between title and foot. */
    public Size body() {
        return View.body(window.size()).size();
    }

    /** The layer that keys go to. */
    public Layer top() {
        return layers.top();
    }

    /** All that can be done now: what the top layer offers, then what holds everywhere. */
    public List<Offer> offers() {
        List<Offer> all = new ArrayList<>(top().offers(this));
        all.addAll(kit.contents().everywhere(this));
        return all;
    }

    /** The layer that keys go to, replaced. */
    public State withTop(Layer layer) {
        return with(layers.withTop(layer));
    }

    /** A layer laid over the others; if it was once left half done, as it was left. */
    public State laid(Layer layer) {
        return with(layers.laid(layer));
    }

    /** The topmost layer taken away; a page stays. */
    public State lifted() {
        return with(layers.lifted());
    }

    /** Only so many layers left over the page. */
    public State cutTo(int count) {
        return with(layers.cutTo(count));
    }

    /** Another page opened, with nothing over it. */
    public State opening(PageName page) {
        return with(layers.opening(page));
    }

    /** What is not kept: typed on top, beneath, or waiting as a draft; and what the pages have drawn. */
    public List<String> unkept() {
        boolean isHalfTyped =
                !layers.drafts().isEmpty() || layers.over().stream().anyMatch(Layer::isHalfDone);
        Stream<String> drawn = layers.pages().values().stream().flatMap(page -> page.unkept(this).stream());
        return Stream.concat(isHalfTyped ? Stream.of("what is half typed") : Stream.of(), drawn)
                .toList();
    }

    /** The topmost layer put away half done; it waits under its draft name. */
    public State puttingAside() {
        Layers left = layers.lifted();
        return with(top().draftName().map(name -> left.withDraft(name, top())).orElse(left));
    }

    /** Nothing waiting any more under the draft name of the topmost layer. */
    public State droppingDraft() {
        return with(top().draftName().map(layers::withoutDraft).orElse(layers));
    }

    public State saying(Said sentence) {
        return saying(Optional.of(sentence));
    }

    public State silent() {
        return said.isEmpty() ? this : saying(Optional.empty());
    }

    public State with(Timescale other) {
        return new State(kit, copy, shown, almanac, window, layers, picked, other, said, layersAfterAnswer);
    }

    /** A while later on the same day; what is true of the day stays so, and another day is told by a message. */
    public State at(Instant later) {
        Snapshot then = shown.at(later);
        return then.today().equals(shown.today())
                ? new State(kit, copy, then, almanac, window, layers, picked, timescale, said, layersAfterAnswer)
                : this;
    }

    public State withPicked(Set<Id<Pot>> pots) {
        return new State(kit, copy, shown, almanac, window, layers, pots, timescale, said, layersAfterAnswer);
    }

    State with(Layers other) {
        return new State(kit, copy, shown, almanac, window, other, picked, timescale, said, layersAfterAnswer);
    }

    State with(Window other) {
        return new State(kit, copy, shown, almanac, other, layers, picked, timescale, said, layersAfterAnswer);
    }

    State with(Size size) {
        return with(window.withSize(size));
    }

    public State with(Snapshot now) {
        return new State(kit, copy, now, almanac(kit, now), window, layers, picked, timescale, said, layersAfterAnswer);
    }

    State awaitingAnswer(int layersThen) {
        return new State(
                kit, copy, shown, almanac, window, layers, picked, timescale, said, OptionalInt.of(layersThen));
    }

    State answered() {
        return new State(kit, copy, shown, almanac, window, layers, picked, timescale, said, OptionalInt.empty());
    }

    private State saying(Optional<Said> sentence) {
        return new State(kit, copy, shown, almanac, window, layers, picked, timescale, sentence, layersAfterAnswer);
    }
}
