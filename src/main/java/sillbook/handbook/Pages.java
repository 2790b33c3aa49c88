// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sillbook.model.Kind;

/** Turns the rows of the data files into what they say. */
final class Pages {
    private static final List<String> FIGURE_COLUMNS =
            List.of("kind", "class", "figure", "low", "typical", "high", "unit", "source", "sureness", "note");
    private static final String IN_WORDS = "words";

    private Pages() {}

    static List<Figure> figures(String file, String text) {
        List<Figure> figures = new ArrayList<>();
        for (Table.Row row : Table.read(file, text, FIGURE_COLUMNS)) {
            figures.add(figure(row));
        }
        return figures;
    }

    private static Figure figure(Table.Row row) {
        FigureName name = FigureName.of(row.cell(2)).orElseThrow(() -> row.unclear(2));
        if (!name.unit().word().equals(row.cell(6))) {
            throw row.unclear(6);
        }
        Optional<Double> typical = row.cell(4).isEmpty() ? Optional.empty() : Optional.of(number(row, 4));
        return new Figure(
                kind(row), name, number(row, 3), typical, number(row, 5), row.list(7), sureness(row), row.cell(9));
    }

    static List<Remark> remarks(String file, String text) {
        List<Remark> remarks = new ArrayList<>();
        for (Table.Row row : Table.read(file, text, FIGURE_COLUMNS)) {
            Topic topic = Topic.of(row.cell(2)).orElseThrow(() -> row.unclear(2));
            if (!row.cell(6).equals(IN_WORDS)) {
                throw row.unclear(6);
            }
            remarks.add(new Remark(kind(row), topic, row.cell(9), row.list(7), sureness(row)));
        }
        return remarks;
    }

    static List<KindEntry> kinds(String file, String text) {
        List<KindEntry> kinds = new ArrayList<>();
        for (Table.Row row :
                Table.read(file, text, List.of("kind", "plural", "letter", "cold", "others", "source", "suits"))) {
            Kind kind = Kind.of(row.cell(0));
            kinds.add(new KindEntry(
                    kind, row.cell(1), row.cell(2), yes(row, 3), row.list(4), row.list(5), suits(row, 6)));
        }
        return kinds;
    }

    static List<GroupEntry> groups(String file, String text) {
        List<GroupEntry> groups = new ArrayList<>();
        for (Table.Row row : Table.read(file, text, List.of("kind", "class", "name", "suits", "source", "note"))) {
            groups.add(new GroupEntry(kind(row), row.cell(2), suits(row, 3), row.list(4), row.cell(5)));
        }
        return groups;
    }

    static List<Source> sources(String file, String text) {
        List<Source> sources = new ArrayList<>();
        for (Table.Row row : Table.read(file, text, List.of("key", "institution", "title", "locator", "grade"))) {
            sources.add(new Source(row.cell(0), row.cell(1), row.cell(2), row.cell(3), grade(row)));
        }
        return sources;
    }

    private static Kind kind(Table.Row row) {
        return new Kind(row.cell(0), row.cell(1));
    }

    private static double number(Table.Row row, int column) {
        try {
            return Double.parseDouble(row.cell(column));
        } catch (NumberFormatException notOne) {
            throw (IllegalStateException) row.unclear(column).initCause(notOne);
        }
    }

    private static boolean yes(Table.Row row, int column) {
        return switch (row.cell(column)) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw row.unclear(column);
        };
    }

    private static Sureness sureness(Table.Row row) {
        for (Sureness sureness : Sureness.values()) {
            if (sureness.name().toLowerCase(Locale.ROOT).equals(row.cell(8))) {
                return sureness;
            }
        }
        throw row.unclear(8);
    }

    private static Suits suits(Table.Row row, int column) {
        return switch (row.cell(column)) {
            case "first" -> Suits.FIRST;
            case "well" -> Suits.WELL;
            case "tall" -> Suits.TALL;
            case "" -> Suits.NO_WORD;
            default -> throw row.unclear(column);
        };
    }

    private static Source.Grade grade(Table.Row row) {
        return switch (row.cell(4)) {
            case "A" -> Source.Grade.A;
            case "B" -> Source.Grade.B;
            case "C" -> Source.Grade.C;
            case "common practice" -> Source.Grade.COMMON_PRACTICE;
            default -> throw row.unclear(4);
        };
    }
}
