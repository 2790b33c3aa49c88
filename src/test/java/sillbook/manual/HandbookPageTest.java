// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.words.Terms;

/** The page of the handbook holds what the program's own files hold, row for row. */
class HandbookPageTest {
    private static final Path PAGE = Path.of("docs/reference/handbook.md");
    private static final int CLASS = 1;

    @Test
    void everyTableIsThatOfTheProgram() {
        Page page = Page.of(PAGE);
        List<String> lines = Stream.of(Table.values())
                .reduce(page, HandbookPageTest::written, (one, other) -> other)
                .lines();

        assertThat(page.rewritten(lines).lines()).isEqualTo(lines);
    }

    private static Page written(Page page, Table table) {
        String remark = table.remark + ": written by a test";
        return new Page(page.file(), Blocks.retabled(page, remark, table.lines(page, remark)));
    }

    private enum Table {
        KINDS("kinds", "kinds.tsv", row -> true) {
            @Override
            List<String> cells(List<String> row) {
                return List.of(row.get(0), row.get(3), row.get(2), row.get(4).replace(",", ", "), keys(row.get(5)));
            }
        },
        FIGURES("figures", "figures.tsv", row -> true) {
            @Override
            List<String> cells(List<String> row) {
                return figure(row);
            }
        },
        REMARKS("remarks", "remarks.tsv", row -> !isCaution(row)) {
            @Override
            List<String> cells(List<String> row) {
                return said(row);
            }
        },
        CAUTIONS("cautions", "remarks.tsv", Table::isCaution) {
            @Override
            List<String> cells(List<String> row) {
                return said(row);
            }
        },
        CLASSES("classes", "classes.tsv", row -> true) {
            @Override
            List<String> cells(List<String> row) {
                return List.of(row.get(0), row.get(CLASS), row.get(2), row.get(3), keys(row.get(4)), row.get(5));
            }
        },
        PUBLISHED("published", "published.tsv", row -> true) {
            @Override
            List<String> cells(List<String> row) {
                return figure(row);
            }
        },
        SOURCES("sources", "sources.tsv", row -> true) {
            @Override
            List<String> cells(List<String> row) {
                return List.of(keys(row.get(0)), row.get(1), row.get(2), row.get(3), row.get(4));
            }
        };

        private final String remark;
        private final String file;

        @SuppressWarnings("ImmutableEnumChecker") // it has no state
        private final Predicate<List<String>> wanted;

        Table(String remark, String file, Predicate<List<String>> wanted) {
            this.remark = remark;
            this.file = file;
            this.wanted = wanted;
        }

        abstract List<String> cells(List<String> row);

        /** The table's heading as it stands, and a line for each row of the file. */
        List<String> lines(Page page, String remarkBefore) {
            List<String> lines = new ArrayList<>(Blocks.heading(page, remarkBefore));
            rows(file).filter(wanted).map(row -> Blocks.row(cells(row))).forEach(lines::add);
            return lines;
        }

        private static boolean isCaution(List<String> row) {
            return row.get(2).startsWith("caution-");
        }

        private static List<String> figure(List<String> row) {
            String name = Terms.FIGURES.say(FigureName.of(row.get(2)).orElseThrow());
            return List.of(
                    kind(row),
                    name,
                    row.get(3),
                    row.get(4),
                    row.get(5),
                    row.get(6),
                    row.get(8),
                    keys(row.get(7)),
                    row.get(9));
        }

        private static List<String> said(List<String> row) {
            String topic = row.get(2).replace("caution-", "").replace('-', ' ');
            return List.of(kind(row), topic, row.get(9), row.get(8), keys(row.get(7)));
        }

        private static String kind(List<String> row) {
            return (row.get(0) + " " + row.get(CLASS)).strip();
        }

        private static String keys(String keys) {
            return "`" + keys.replace(",", "` `") + "`";
        }
    }

    /** The rows of a file of the handbook, without its heading and its remarks; empty cells at the end are there too. */
    private static Stream<List<String>> rows(String file) {
        try (InputStream in = Handbook.class.getResourceAsStream(file)) {
            String text = new String(in.readAllBytes(), UTF_8);
            return text.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> List.of((line + "\t\t").split("\t", -1)));
        } catch (IOException failure) {
            throw new UncheckedIOException(file, failure);
        }
    }
}
