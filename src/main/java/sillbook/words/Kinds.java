// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.handbook.GroupEntry;
import sillbook.handbook.Handbook;
import sillbook.handbook.KindEntry;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.OwnKind;
import sillbook.text.Fold;
import sillbook.text.Near;

/** Kinds of bulb by name: the grower's own, then those of the handbook with their classes and divisions. */
public record Kinds(Journal journal, Handbook handbook) {

    /** Every kind, then every class: the grower's own first. */
    public List<Kind> all() {
        List<Kind> all = new ArrayList<>();
        journal.ownKinds().all().forEach(own -> all.add(Kind.of(own.name())));
        handbook.kinds().forEach(entry -> all.add(entry.kind()));
        handbook.kinds().forEach(entry -> handbook.groups(entry.kind()).forEach(group -> all.add(group.kind())));
        return all;
    }

    /** {@code tulip triumph}, {@code Daffodils 6}, {@code muscari}, or a beginning that no other kind shares. */
    public Heard<Kind> parse(String text) {
        return find(text).or(() -> onlyOne(beginning(text))).map(Heard::as).orElseGet(() -> unknown(text));
    }

    /** By its whole name. */
    public Optional<Kind> find(String text) {
        return own(text).or(() -> handbook.find(text));
    }

    private Optional<Kind> own(String text) {
        return journal.ownKinds().all().stream()
                .filter(own -> Fold.of(own.name()).equals(Fold.of(text).strip()))
                .map(own -> Kind.of(own.name()))
                .findFirst();
    }

    private static Optional<Kind> onlyOne(List<Kind> kinds) {
        boolean oneName = kinds.stream().map(Kind::name).distinct().count() == 1;
        return oneName ? Optional.of(kinds.get(0)) : Optional.empty();
    }

    /** All kinds and classes that the text may be the beginning of. */
    public List<Kind> beginning(String text) {
        String typed = Fold.of(text).strip();
        return all().stream()
                .filter(kind -> names(kind).anyMatch(name -> Fold.of(name).startsWith(typed)))
                .toList();
    }

    private Stream<String> names(Kind kind) {
        if (!kind.group().isEmpty()) {
            return Stream.of(kind.toString(), kind.name() + " " + groupName(kind));
        }
        Stream<String> others = handbook.entry(kind).stream()
                .flatMap(entry -> Stream.concat(Stream.of(entry.plural()), entry.otherNames().stream()));
        return Stream.concat(Stream.of(kind.name()), others);
    }

    /** The name in words of a kind's class or division; empty when it has none. */
    public String groupName(Kind kind) {
        return handbook.groups(kind).stream()
                .filter(group -> group.kind().equals(kind))
                .map(GroupEntry::name)
                .findFirst()
                .orElse(kind.group());
    }

    /** What the labels of its pots begin with. */
    public String letter(Kind kind) {
        return journal.ownKinds().all().stream()
                .filter(own -> own.name().equals(kind.name()))
                .map(OwnKind::letter)
                .findFirst()
                .or(() -> handbook.entry(kind).map(KindEntry::letter))
                .orElseGet(() -> kind.name().substring(0, 1).toUpperCase(Locale.ROOT));
    }

    private Heard<Kind> unknown(String text) {
        List<String> names = all().stream().map(Kind::toString).toList();
        String ask = Near.closest(text.strip(), names)
                .map(near -> "Did you mean " + near + "?")
                .orElse("Write one as tulip triumph, daffodil 6 or crocus; kind and a name makes a new one.");
        return Heard.not("no kind of bulb", "'" + text.strip() + "' is no kind of bulb. " + ask);
    }
}
