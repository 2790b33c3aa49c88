// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.change.WriteDown;
import sillbook.model.Container;
import sillbook.model.Container.Shape;
import sillbook.model.Length;
import sillbook.model.Settings.LengthUnit;
import sillbook.words.Counts;
import sillbook.words.Heard;
import sillbook.words.Lengths;
import sillbook.words.Terms;

/** {@code container pan 15 cm, 6 of them}: pots as objects; shape and size may stand in the name. */
final class ContainerForm implements Form {
    private static final Slot<Shape> SHAPE = Slot.one("shape of pot", Senses.oneOf(Terms.SHAPES));
    private static final Slot<Length> HEIGHT = Slot.one("", Senses.longest((words, bench) -> height(words)));
    private static final Slot<Integer> STOCK =
            Slot.one("number", Senses.number("(?:stock )?(\\d{1,4})(?: of them| pieces| in stock)?"));
    private static final Slot<Integer> UNWASHED = Slot.one(
            "",
            Senses.matching(
                    "(\\d{1,4})(?: of them)? unwashed|all washed", said -> Heard.as(said.has(1) ? said.number(1) : 0)));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "container",
                "A name, in which shape and inside width may stand (standard, azalea, pan, bowl, glass, outer pot); then how "
                        + "many there are, how many of them are unwashed (or all washed), the height as 12 cm high, note.",
                "container pan 15 cm, 6 of them",
                "container pan 15 cm, 2 unwashed",
                "container blue bowl, bowl, 19 cm, 9 cm high, 2 of them");
    }

    @Override
    public List<String> keywords() {
        return List.of("container");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.NAME, SHAPE, HEIGHT, Slots.LENGTH, UNWASHED, STOCK, Slots.CALLED, Slots.NOTE);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(Slots.NAME) ? 0 : 1;
    }

    private static Optional<Heard<Length>> height(String words) {
        int end = words.lastIndexOf(" high");
        boolean led = end > 0 && end + " high".length() == words.length();
        return led && Lengths.isSure(words.substring(0, end))
                ? Optional.of(Lengths.parse(words.substring(0, end)))
                : Optional.empty();
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        filled.get(Slots.NAME)
                .ifPresentOrElse(
                        name -> write(name, filled, draft),
                        () -> draft.ask(
                                "which name?", "Which container? Write its name first, as: pan 15 cm, 6 of them."));
    }

    private static void write(String name, Filled filled, Draft draft) {
        List<Container> there = new Names<>(draft.bench().journal().containers().all(), Container::name).whole(name);
        Container before = there.isEmpty() ? described(name, draft.bench()) : there.get(0);
        Container container = new Container(
                before.id(),
                filled.get(Slots.CALLED).orElse(before.name()),
                filled.get(SHAPE).orElse(before.shape()),
                filled.get(Slots.LENGTH).or(before::across),
                filled.get(HEIGHT).or(before::height),
                filled.get(STOCK).orElse(before.stock()),
                filled.get(UNWASHED)
                        .orElse(Math.min(before.unwashed(), filled.get(STOCK).orElse(before.stock()))),
                filled.get(Slots.NOTE).orElse(before.note()));
        Lines.written("container", before.name(), there.isEmpty(), draft);
        say(container, draft.bench().journal().settings().lengths(), draft);
        draft.change(new WriteDown(container));
    }

    /** One of which only its name tells something. */
    private static Container described(String name, Bench bench) {
        Written words = Written.of(name);
        return new Container(
                bench.ids().next(),
                name,
                inside(SHAPE.sense(), words, bench).orElse(Shape.OTHER),
                inside(Slots.LENGTH.sense(), words, bench),
                Optional.empty(),
                1,
                0,
                "");
    }

    /** The first sense that is made of any words of the name. */
    private static <T> Optional<T> inside(Sense<T> sense, Written words, Bench bench) {
        for (int i = 0; i < words.size(); i++) {
            Optional<T> found =
                    sense.at(words, i, bench).flatMap(at -> at.meaning().value());
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static void say(Container container, LengthUnit unit, Draft draft) {
        draft.means("shape: " + Terms.SHAPES.say(container.shape()));
        container.across().ifPresent(across -> draft.means(Lengths.say(across, unit) + " across, inside"));
        container.height().ifPresent(height -> draft.means(Lengths.say(height, unit) + " high"));
        draft.means(Counts.of(container.stock(), "piece")
                + (container.unwashed() == 0 ? "" : ", " + container.unwashed() + " unwashed"));
        if (container.unwashed() > container.stock()) {
            draft.ask(
                    "more than there are",
                    "There are " + container.stock() + " of them, so not " + container.unwashed()
                            + " can be unwashed. Write how many there are too, as: 6 of them.");
        }
        Lines.noted(container.note(), draft);
    }
}
