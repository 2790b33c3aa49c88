// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import sillbook.words.Provisos;
import sillbook.words.line.LineReading;
import sillbook.words.line.Meaning;

/** What commands that write answer, as JSON. */
public final class StepsJson {
    private StepsJson() {}

    /**
     * A line, as it was read and done.
     *
     * @param step the name of the step it makes
     */
    public record Line(String line, String step, LineReading reading) {
        private Fields fields() {
            return new Fields()
                    .text("line", line)
                    .text("step", step)
                    .texts("means", reading.means().stream().map(Meaning::says).toList())
                    .texts("then", reading.then());
        }
    }

    /**
     * The document of {@code sillbook write}.
     *
     * @param lines those that were done
     * @param kept whether they are in the journal now, or were only tried
     */
    public static String lines(List<Line> lines, boolean kept, Provisos provisos) {
        return Answer.write(new Fields().flag("kept", kept).list("lines", lines, Line::fields), provisos);
    }

    /** The document of {@code sillbook undo} and {@code redo}: the name of the step. */
    public static String step(String name) {
        return Answer.write(new Fields().text("step", name));
    }

    /** The document of {@code sillbook verify}: what is wrong, a sentence each. */
    public static String findings(List<String> findings) {
        return Answer.write(new Fields().flag("well", findings.isEmpty()).texts("findings", findings));
    }
}
