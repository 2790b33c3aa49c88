// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.handbook.Origin;
import sillbook.handbook.Topic;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.season.Figures;
import sillbook.season.WaitingBulbs;

/** What is said of bulbs that wait dry: how long they may, and how they are kept. */
public record DryBulbWords(Journal journal, Handbook handbook, Figures figures) {

    /** How they are kept, and kept apart from food and fruit; one text a line. */
    public List<String> keeping() {
        return Stream.of(Topic.DRY_KEEPING, Topic.CAUTION_FRIDGE)
                .flatMap(topic -> handbook.remarks(Handbook.EVERY, topic).stream())
                .map(RemarkWords::marked)
                .toList();
    }

    /**
     * {@code 3 weeks of dry cold; at most ▫10 count, and ▫5 weeks in the pot have to follow, for the roots.} Once they wait long,
     * by which day to pot them. Empty for what needs no cold.
     */
    public String howLong(WaitingBulbs bulbs, LocalDate today) {
        return bulbs.limit().map(limit -> howLong(bulbs, limit, today)).orElse("");
    }

    private String howLong(WaitingBulbs bulbs, FigureInForce limit, LocalDate today) {
        Kind kind = journal.varieties().get(bulbs.purchase().variety()).kind();
        String counts = "at most " + marked(kind, limit) + " weeks count" + rooting(kind) + ".";
        String pot = bulbs.potBy(today).map(day -> potBy(day, today)).orElse("");
        return had(bulbs) + "; " + counts + pot;
    }

    private static String had(WaitingBulbs bulbs) {
        int days = bulbs.dry().days();
        return days == 0 ? "No dry cold so far" : Weeks.sayDays(days) + " of dry cold";
    }

    private String rooting(Kind kind) {
        return figures.find(kind, FigureName.POTTED_COLD)
                .map(weeks -> ", and " + marked(kind, weeks) + " weeks in the pot have to follow, for the roots")
                .orElse("");
    }

    private static String potBy(LocalDate day, LocalDate today) {
        return day.isAfter(today) ? " Pot them by " + Days.day(day) + "." : " Pot them now.";
    }

    /** What is published of one kind is taken for granted of the others. */
    private String marked(Kind kind, FigureInForce figure) {
        boolean isTakenForGranted = figure.origin() == Origin.HANDBOOK_GENERAL
                && handbook.published(kind, FigureName.DRY_COLD).isEmpty();
        return isTakenForGranted ? OriginMarks.assumed(figure) : OriginMarks.marked(figure);
    }
}
