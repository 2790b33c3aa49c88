// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import sillbook.change.Change;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Place.ColdDays;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Space;
import sillbook.model.Space.Surface;
import sillbook.text.Fold;
import sillbook.words.ColdDayWords;
import sillbook.words.Groups;
import sillbook.words.Heard;
import sillbook.words.Lengths;

/** What a line says of the shelf of a place, and of when the place is there. */
record SpaceFacts(Filled filled) {
    private static final Pattern SIDES = Pattern.compile("shelf (?:of )?(.+?) ?(?:x|by) ?(.+?)");
    private static final Heard<Surface> NO_SHELF = Heard.not(
            "a shelf, as 60 x 40 cm", "That is no shelf for pots. Write its two sides, as: shelf 60 x 40 cm.");
    private static final Slot<Surface> SHELF = Slot.one("", Senses.longest((words, bench) -> shelf(words)));
    private static final Slot<Length> CLEAR = Slot.one("", Senses.longest((words, bench) -> clear(Fold.of(words))));
    private static final Slot<ColdDays> THERE = Slot.one("", Senses.longest((words, bench) -> there(words)));

    static final List<Slot<?>> SLOTS = List.of(SHELF, CLEAR, THERE);

    private static Optional<Heard<Surface>> shelf(String words) {
        String said = Fold.of(words);
        return said.startsWith("shelf ")
                ? Optional.of(Groups.of(SIDES, said).map(SpaceFacts::surface).orElse(NO_SHELF))
                : Optional.empty();
    }

    /** {@code 60 x 40 cm}: the unit of the second side holds for the first where it has none. */
    private static Heard<Surface> surface(Groups sides) {
        String unit = sides.text(2).replaceFirst("^[\\d.,/ ]+", "");
        String first = Lengths.isSure(sides.text(1)) ? sides.text(1) : sides.text(1) + " " + unit;
        return Lengths.parse(first)
                .then(width -> Lengths.parse(sides.text(2))
                        .then(depth -> width.tenths() > 0 && depth.tenths() > 0
                                ? Heard.as(new Surface(width, depth))
                                : NO_SHELF));
    }

    private static Optional<Heard<Length>> clear(String words) {
        String length = words.replaceFirst("^clear (?:height )?", "").replaceFirst(" clear$", "");
        return length.equals(words) || !Lengths.isSure(length) ? Optional.empty() : Optional.of(Lengths.parse(length));
    }

    private static Optional<Heard<ColdDays>> there(String words) {
        String lead = "there ";
        return Fold.of(words).startsWith(lead) && words.length() > lead.length()
                ? Optional.of(ColdDayWords.parse(words.substring(lead.length())))
                : Optional.empty();
    }

    /** The place with its shelf, where the line says something of that; else the place alone. */
    Change with(Place place, boolean isNew, Draft draft) {
        WriteDown written = new WriteDown(place);
        if (SLOTS.stream().noneMatch(filled::has)) {
            return written;
        }
        Space space = over(
                place,
                Space.of(place.id(), draft.bench().journal())
                        .orElseGet(() -> new Space(
                                draft.bench().ids().next(),
                                place.id(),
                                Optional.empty(),
                                Optional.empty(),
                                ColdDays.ALL_YEAR)));
        say(draft);
        String name = "place " + place.name() + (isNew ? " written down" : " corrected");
        return new Together(name, List.of(written, new WriteDown(space)));
    }

    private Space over(Place place, Space before) {
        return new Space(
                before.id(),
                place.id(),
                filled.get(SHELF).or(before::shelf),
                filled.get(CLEAR).or(before::clear),
                filled.get(THERE).orElse(before.there()));
    }

    private void say(Draft draft) {
        LengthUnit unit = draft.bench().journal().settings().lengths();
        filled.get(SHELF)
                .ifPresent(shelf -> draft.means("a shelf of " + Lengths.number(shelf.width(), unit) + " x "
                        + Lengths.say(shelf.depth(), unit)));
        filled.get(CLEAR).ifPresent(clear -> draft.means(Lengths.say(clear, unit) + " clear above it"));
        filled.get(THERE).ifPresent(days -> draft.means("there " + ColdDayWords.say(days)));
    }
}
