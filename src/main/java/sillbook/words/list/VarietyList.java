// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Variety;
import sillbook.model.Variety.BloomSeason;
import sillbook.model.Variety.ForPots;
import sillbook.model.Variety.PacketForcing;
import sillbook.model.Variety.Scent;
import sillbook.words.Heard;
import sillbook.words.Lengths;
import sillbook.words.Terms;
import sillbook.words.Vocabulary;
import sillbook.words.line.Bench;

/** Varieties, a row each. Of one that is in the book, an empty cell changes nothing. */
final class VarietyList implements ListForm<Variety> {
    private static final Naming<Variety> NAMED = new Naming<>(
            Column.<Variety, String>of(
                            "name",
                            "the variety's name, with or without quotes",
                            (cell, bench) -> Naming.name(cell),
                            (variety, journal) -> "")
                    .orCalled("variety", "cultivar")
                    .needed(),
            Column.of(
                    "kind",
                    "its kind, with its class if you like: tulip, tulip triumph, daffodil 6; needed unless it is in the book",
                    Naming::kind,
                    (variety, journal) -> variety.kind().toString()),
            Column.<Variety, String>of(
                            "class",
                            "its class or division, where the kind's own cell does not say it: triumph, 6",
                            (cell, bench) -> Heard.as(cell),
                            (variety, journal) -> "")
                    .orCalled("division", "group"));
    private static final Column<Variety, Length> HEIGHT = Column.of(
            "height",
            "full height in flower, in centimetres unless a unit is written: 45, 18in",
            (cell, bench) -> Lengths.parse(cell),
            (variety, journal) -> variety.height()
                    .map(height -> Lengths.say(height, journal.settings().lengths()))
                    .orElse(""));
    private static final Column<Variety, BloomSeason> SEASON = Column.of(
                    "season",
                    "when it flowers among its kind: early, mid season, late",
                    word(Terms.BLOOM_SEASONS),
                    say(Terms.BLOOM_SEASONS, BloomSeason.NOT_SAID, Variety::bloomSeason))
            .orCalled("bloom season", "time of flower");
    private static final Column<Variety, String> COLOUR =
            written("colour", "in your words", Variety::colour).orCalled("color");
    private static final Column<Variety, Scent> SCENT = Column.of(
            "scent",
            "none, light or strong",
            word(Terms.SCENTS.with(Scent.NONE, "none", "no").with(Scent.LIGHT, "light", "yes")),
            say(Terms.SCENTS, Scent.NOT_SAID, Variety::scent));
    private static final Column<Variety, PacketForcing> PACKET = Column.of(
                    "packet",
                    "what the packet says of forcing: yes, no, not stated",
                    word(Terms.PACKETS),
                    VarietyList::packet)
            .orCalled("forcing", "packet says");
    private static final Column<Variety, ForPots> FOR_POTS = Column.of(
                    "for pots",
                    "your own mark: suits pots, tall for pots, not for pots",
                    word(Terms.FOR_POTS),
                    say(Terms.FOR_POTS, ForPots.NOT_MARKED, Variety::forPots))
            .orCalled("own mark");
    private static final Column<Variety, String> SOLD_AS = written(
                    "sold as", "the name on the packet, where it is another", Variety::packetName)
            .orCalled("packet name");
    private static final Column<Variety, String> NOTE =
            written("note", "in your words", Variety::note).orCalled("notes");

    private static final List<Column<Variety, ?>> COLUMNS = List.of(
            NAMED.name(), NAMED.kind(), NAMED.group(), HEIGHT, SEASON, COLOUR, SCENT, PACKET, FOR_POTS, SOLD_AS, NOTE);

    private static <T> BiFunction<String, Bench, Heard<T>> word(Vocabulary<T> words) {
        return (cell, bench) -> words.parse(cell);
    }

    private static <T> BiFunction<Variety, Journal, String> say(
            Vocabulary<T> words, T nothing, Function<Variety, T> fact) {
        return (variety, journal) -> fact.apply(variety).equals(nothing) ? "" : words.say(fact.apply(variety));
    }

    private static Column<Variety, String> written(String name, String holds, Function<Variety, String> fact) {
        return Column.of(name, holds, (cell, bench) -> Heard.as(cell), (variety, journal) -> fact.apply(variety));
    }

    private static String packet(Variety variety, Journal journal) {
        return variety.packetForcing() == PacketForcing.NOT_STATED
                ? ""
                : "packet says " + Terms.PACKETS.say(variety.packetForcing());
    }

    @Override
    public List<Column<Variety, ?>> columns() {
        return COLUMNS;
    }

    @Override
    public String name(Variety variety, Journal journal) {
        return "'" + variety.name() + "'";
    }

    @Override
    public Optional<Meant<Variety>> read(Cells cells) {
        return NAMED.read(cells)
                .map(named -> new Meant<>(named.known(), over(named.variety(), named.kind(), cells), Optional.empty()));
    }

    private static Variety over(Variety before, Kind kind, Cells cells) {
        return new Variety(
                before.id(),
                before.name(),
                cells.get(SOLD_AS).orElse(before.packetName()),
                kind,
                cells.get(HEIGHT).or(before::height),
                cells.get(SEASON).orElse(before.bloomSeason()),
                cells.get(COLOUR).orElse(before.colour()),
                cells.get(SCENT).orElse(before.scent()),
                cells.get(PACKET).orElse(before.packetForcing()),
                cells.get(FOR_POTS).orElse(before.forPots()),
                cells.get(NOTE).orElse(before.note()));
    }
}
