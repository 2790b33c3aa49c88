// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The rows of the first table of a page after a mark, without its head. */
record MarkdownTable(List<List<String>> rows) {
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");

    static MarkdownTable of(String page, String mark) {
        try (Stream<String> lines = Files.lines(Path.of(page))) {
            return new MarkdownTable(lines.dropWhile(line -> !line.contains(mark))
                    .dropWhile(line -> !line.startsWith("|"))
                    .takeWhile(line -> line.startsWith("|"))
                    .skip(2)
                    .map(MarkdownTable::cells)
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException("could not read " + page, e);
        }
    }

    private static List<String> cells(String line) {
        List<String> cells = List.of(line.split("\\|", -1));
        return cells.subList(1, cells.size() - 1).stream().map(String::strip).toList();
    }

    /** What stands between the backticks of a cell. */
    static List<String> quoted(String cell) {
        return QUOTED.matcher(cell)
                .results()
                .map((MatchResult found) -> found.group(1))
                .toList();
    }
}
