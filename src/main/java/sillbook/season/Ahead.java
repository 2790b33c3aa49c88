// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.Origin;
import sillbook.model.Id;
import sillbook.model.KeptWindow;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.reckon.dates.Window;

/**
 * A stage to come: when it begins, and what that rests on.
 *
 * @param window of the next stage the earliest day may lie behind; the likely one never does
 * @param figure the figure that was added last; empty for a stage that can begin at once
 */
public record Ahead(Stage stage, Window window, List<Ground> restsOn, Optional<FigureInForce> figure) {
    public Ahead {
        restsOn = List.copyOf(restsOn);
    }

    /** The same as it is kept for later. */
    KeptWindow kept(Id<Pot> pot, LocalDate madeOn) {
        Stream<String> grounds = restsOn.stream().map(ground -> ground.name().toLowerCase(Locale.ROOT));
        Stream<String> origin = figure.stream().map(held -> held.name().key() + bracketed(held.origin()));
        String basis = Stream.concat(grounds, origin).collect(Collectors.joining(", "));
        return new KeptWindow(pot, stage, madeOn, window.earliest(), window.likely(), window.latest(), basis);
    }

    /** Whether the figure that was added last to a window that was kept had been learnt. */
    public static boolean isLearnt(KeptWindow kept) {
        return kept.basis().endsWith(bracketed(Origin.LEARNT_FOR_KIND));
    }

    private static String bracketed(Origin origin) {
        return " (" + origin.word() + ")";
    }

    /** What a coming day rests on, beside a figure. */
    public enum Ground {
        /** The cold it has had. */
        COLD,
        /** Roots that were seen. */
        ROOTS,
        /** A shoot that was seen. */
        SHOOT,
        /** A day of an earlier stage that has really begun. */
        BEGUN,
        /** The day of the plan that was adopted, inside what the figures allow. */
        PLAN,
        /** That plan, whose day the figures do not allow: the nearest one that they do. */
        NEAR_PLAN,
        /** A wish, inside what the figures allow. */
        WISH,
        /** The usual time of the year. */
        CALENDAR
    }
}
