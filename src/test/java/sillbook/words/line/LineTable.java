// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import sillbook.change.Change;

/**
 * Tables of lines and what they mean, as text. A line of the journal stands after {@code >}; under it, marked at the front,
 * the step it would become ({@code =}), what it means ({@code -}), what follows ({@code +}), remarks ({@code *}), the
 * complaint ({@code !}), and words not understood ({@code ?}). Lines after {@code @} are written into the journal first.
 */
final class LineTable {
    private LineTable() {}

    /**
     * A line and what a reading of it should show.
     *
     * @param before lines that were written before, the same for all of a table
     */
    record Row(List<String> before, String line, List<String> shows) {}

    static Stream<Named<Row>> rows(String resource) {
        List<Row> rows = new ArrayList<>();
        List<String> before = new ArrayList<>();
        for (String text : text(resource).split("\n", -1)) {
            if (text.startsWith("> ")) {
                rows.add(new Row(before, text.substring(2), new ArrayList<>()));
            } else if (text.startsWith("@ ")) {
                before.add(text.substring(2));
            } else if (!text.isBlank() && !text.startsWith("#")) {
                rows.get(rows.size() - 1).shows().add(text.strip());
            }
        }
        return rows.stream().map(row -> Named.of(row.line(), row));
    }

    static String text(String resource) {
        try (InputStream in = LineTable.class.getResourceAsStream("/sillbook/words/" + resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A reading in the form of the tables. */
    static List<String> shows(LineReading reading, String line, Bench bench) {
        List<String> shows = new ArrayList<>();
        step(reading.change(), bench).ifPresent(name -> shows.add("= " + name));
        reading.means().forEach(meaning -> shows.add("- " + meaning.says() + warning(meaning)));
        reading.then().forEach(fact -> shows.add("+ " + fact));
        reading.remarks().forEach(remark -> shows.add("* " + remark.says()));
        reading.complaint().ifPresent(complaint -> shows.add("! " + complaint.sentence()));
        String unknown = reading.unknown().stream().map(at -> at.of(line)).collect(Collectors.joining(" | "));
        if (!unknown.isEmpty()) {
            shows.add("? " + unknown);
        }
        return shows;
    }

    private static String warning(Meaning meaning) {
        return meaning.warning().isEmpty() ? "" : "  ! " + meaning.warning();
    }

    private static Optional<String> step(Optional<Change> change, Bench bench) {
        return change.map(
                made -> made.on(bench.journal(), bench.hand()).fold(step -> step.name(), refusal -> "REFUSED"));
    }
}
