// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import sillbook.model.Kind;
import sillbook.model.Variety;
import sillbook.text.Fold;
import sillbook.words.Complaint;
import sillbook.words.Heard;
import sillbook.words.Kinds;
import sillbook.words.line.Bench;

/**
 * The three columns that name a variety.
 *
 * @param <E> what a row of the list is
 */
record Naming<E>(Column<E, String> name, Column<E, Kind> kind, Column<E, String> group) {
    private static final Pattern QUOTED = Pattern.compile("['‘’\"“](.*)['’\"”]");

    /** A name without the quotes that packets print round it. */
    static Heard<String> name(String cell) {
        String bare = QUOTED.matcher(cell).replaceFirst("$1").strip();
        return bare.codePoints().noneMatch(Character::isLetterOrDigit)
                ? Heard.not("no name", "'" + cell + "' is no name. Write the variety's, as Marrow Lane.")
                : Heard.as(bare);
    }

    static Heard<Kind> kind(String cell, Bench bench) {
        return kinds(bench).parse(cell);
    }

    private static Kinds kinds(Bench bench) {
        return new Kinds(bench.journal(), bench.handbook());
    }

    /**
     * The variety a row names.
     *
     * @param isNew whether it is not in the journal yet
     * @param kind as the row has it, where it has more of it than the journal
     */
    record Named(Variety variety, boolean isNew, Kind kind) {
        Optional<Variety> known() {
            return isNew ? Optional.empty() : Optional.of(variety);
        }

        /** A kind without its class takes nothing away from a variety of which the class is known. */
        static Named known(Variety variety, Optional<Kind> written) {
            Kind kind = written.filter(one -> !one.group().isEmpty()).orElse(variety.kind());
            return new Named(variety, false, kind);
        }
    }

    /** Which variety a row means; empty, and the cell blamed, where that is open. */
    Optional<Named> read(Cells cells) {
        Heard<Optional<Kind>> written = written(cells);
        written.complaint().map(Complaint::sentence).ifPresent(why -> cells.blame(group, why));
        return written.value().flatMap(kind -> read(cells.need(name), kind, cells));
    }

    private Heard<Optional<Kind>> written(Cells cells) {
        Optional<Kind> plain = cells.get(kind);
        Optional<String> narrower = cells.get(group);
        return plain.isPresent() && narrower.isPresent()
                ? kind(plain.get().name() + " " + narrower.get(), cells.bench()).map(Optional::of)
                : Heard.as(plain);
    }

    private Optional<Named> read(String bare, Optional<Kind> written, Cells cells) {
        List<Variety> known = known(bare, written, cells.bench());
        if (known.size() == 1) {
            return Optional.of(Named.known(known.get(0), written));
        }
        if (known.isEmpty() && written.isPresent()) {
            Variety made = Variety.of(cells.bench().ids().next(), bare, written.get());
            return Optional.of(new Named(made, true, made.kind()));
        }
        cells.blame(
                kind,
                known.isEmpty()
                        ? "'" + bare + "' is not in the book yet. Write its kind too, as tulip triumph."
                        : "there is more than one '" + bare + "' in the book. Write the kind of the one meant.");
        return Optional.empty();
    }

    private static List<Variety> known(String bare, Optional<Kind> written, Bench bench) {
        return bench.journal().varieties().all().stream()
                .filter(variety -> Fold.of(variety.name()).equals(Fold.of(bare)))
                .filter(variety -> written.map(Kind::name)
                        .map(variety.kind().name()::equals)
                        .orElse(true))
                .toList();
    }
}
