// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import sillbook.model.Kind;

/**
 * What is published of forcing bulbs: figures, words of care and caution, kinds and their classes, sources.
 *
 * <p>A figure is looked for with the kind's class, then with the kind, then, for a kind that needs cold, among those
 * published for hardy bulbs at large. What nobody published is empty, never 0. Each file is read once, when something
 * in it is first asked for.
 */
public final class Handbook {
    /** Stands as a kind in the data for what is published of hardy bulbs at large: those that need cold. */
    public static final Kind HARDY = Kind.of("hardy");

    /** Stands as a kind in the data for what is published of every bulb. */
    public static final Kind EVERY = Kind.of("every");

    private static final Handbook STANDARD = new Handbook(Handbook::resource);

    private final Supplier<FigureIndex> figures;
    private final Supplier<List<Figure>> published;
    private final Supplier<List<Remark>> remarks;
    private final Supplier<List<KindEntry>> kinds;
    private final Supplier<List<GroupEntry>> groups;
    private final Supplier<List<Source>> sources;

    /**
     * A handbook of other files.
     *
     * @param files from a file's name to its text
     */
    Handbook(Function<String, String> files) {
        figures = Lazy.of(() -> FigureIndex.of(Pages.figures("figures.tsv", files.apply("figures.tsv"))));
        published = Lazy.of(() -> List.copyOf(Pages.figures("published.tsv", files.apply("published.tsv"))));
        remarks = Lazy.of(() -> List.copyOf(Pages.remarks("remarks.tsv", files.apply("remarks.tsv"))));
        kinds = Lazy.of(() -> List.copyOf(Pages.kinds("kinds.tsv", files.apply("kinds.tsv"))));
        groups = Lazy.of(() -> List.copyOf(Pages.groups("classes.tsv", files.apply("classes.tsv"))));
        sources = Lazy.of(() -> List.copyOf(Pages.sources("sources.tsv", files.apply("sources.tsv"))));
    }

    /** The handbook that comes with the program. */
    public static Handbook standard() {
        return STANDARD;
    }

    /** The figure used. */
    public Optional<Figure> figure(Kind kind, FigureName name) {
        for (Kind level : levels(kind)) {
            Optional<Figure> figure = figures.get().find(level, name);
            if (figure.isPresent()) {
                return figure;
            }
        }
        return Optional.empty();
    }

    /** What the single sources say of it, where they say so of this kind or class itself; in the order of the data. */
    public List<Figure> published(Kind kind, FigureName name) {
        List<Figure> rows = new ArrayList<>();
        for (Figure row : published.get()) {
            if (row.name() == name && (row.kind().equals(kind) || row.kind().equals(kind.withoutGroup()))) {
                rows.add(row);
            }
        }
        return rows;
    }

    /** Everything said on a topic of the class, of the kind, of hardy bulbs where it is one, and of every bulb. */
    public List<Remark> remarks(Kind kind, Topic topic) {
        List<Remark> found = new ArrayList<>();
        for (Kind level : levels(kind)) {
            for (Remark remark : remarks.get()) {
                if (remark.topic() == topic && remark.kind().equals(level)) {
                    found.add(remark);
                }
            }
        }
        return found;
    }

    /** All cautions for a kind: its own first, then those for every bulb. */
    public List<Remark> cautions(Kind kind) {
        List<Remark> found = new ArrayList<>();
        for (Kind level : levels(kind)) {
            for (Remark remark : remarks.get()) {
                if (remark.topic().isCaution() && remark.kind().equals(level)) {
                    found.add(remark);
                }
            }
        }
        return found;
    }

    /** All kinds, in the order they are best listed in. */
    public List<KindEntry> kinds() {
        return kinds.get();
    }

    /** What is known of a kind, its class set aside. */
    public Optional<KindEntry> entry(Kind kind) {
        for (KindEntry entry : kinds()) {
            if (entry.kind().name().equals(kind.name())) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    /** The classes or divisions of a kind; none where the trade has no list. */
    public List<GroupEntry> groups(Kind kind) {
        List<GroupEntry> found = new ArrayList<>();
        for (GroupEntry entry : groups.get()) {
            if (entry.kind().name().equals(kind.name())) {
                found.add(entry);
            }
        }
        return found;
    }

    /** The kind meant by typed text, as {@code tulip triumph}, {@code Daffodils 6} or {@code muscari}. */
    public Optional<Kind> find(String typed) {
        return new Names(kinds(), groups.get()).find(typed);
    }

    public Optional<Source> source(String key) {
        for (Source source : sources()) {
            if (source.key().equals(key)) {
                return Optional.of(source);
            }
        }
        return Optional.empty();
    }

    public List<Source> sources() {
        return sources.get();
    }

    /** The kinds to look under, the narrowest first. */
    private List<Kind> levels(Kind kind) {
        List<Kind> levels = new ArrayList<>();
        levels.add(kind);
        if (!kind.group().isEmpty()) {
            levels.add(kind.withoutGroup());
        }
        if (entry(kind).filter(KindEntry::needsCold).isPresent()) {
            levels.add(HARDY);
        }
        if (!kind.equals(EVERY)) {
            levels.add(EVERY);
        }
        return levels;
    }

    static String resource(String name) {
        try (InputStream in = Handbook.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("could not read the program's file " + name, e);
        }
    }
}
