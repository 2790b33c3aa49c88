// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import sillbook.model.Journal;
import sillbook.words.Provisos;
import sillbook.words.Stick;

/** Labels as JSON. */
public final class LabelsJson {
    private LabelsJson() {}

    /**
     * The document of {@code sillbook labels --json}.
     *
     * @param cautions whole sentences, each with its sources
     */
    public static String write(Journal journal, List<Stick> sticks, List<String> cautions) {
        Named named = new Named(journal);
        return Answer.write(
                new Fields()
                        .list("labels", sticks, stick -> label(named, stick))
                        .texts("cautions", cautions),
                Provisos.NONE);
    }

    private static Fields label(Named named, Stick stick) {
        return named.pots(stick.pots())
                .happened("potted", stick.potted())
                .day("checkFrom", stick.checkFrom())
                .day("useBy", stick.useBy())
                .day("flowersAbout", stick.flowers())
                .text("line", stick.line());
    }
}
