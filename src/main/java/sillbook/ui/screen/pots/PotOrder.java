// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pots;

import java.util.Comparator;
import java.util.List;
import sillbook.model.Stage;
import sillbook.season.Due;
import sillbook.season.Job;
import sillbook.season.PotLine;
import sillbook.ui.screen.State;
import sillbook.words.PotNames;

/** The order the pots stand in. */
enum PotOrder {
    NEXT_MOVE('n', "by next move"),
    PLACE('p', "by place"),
    KIND('k', "by kind"),
    LABEL('l', "by label"),
    BLOOM('b', "by bloom");

    private final char letter;
    private final String words;

    PotOrder(char letter, String words) {
        this.letter = letter;
        this.words = words;
    }

    char letter() {
        return letter;
    }

    String words() {
        return words;
    }

    /** The lines in this order; those that are equal stay by label. */
    List<PotLine> sort(State state, List<PotLine> lines) {
        return lines.stream().sorted(comparator(state)).toList();
    }

    private Comparator<PotLine> comparator(State state) {
        return switch (this) {
            case NEXT_MOVE -> Comparator.comparing(PotOrder::due).thenComparing(PotOrder::nextDay);
            case PLACE -> Comparator.comparing((PotLine line) -> place(state, line));
            case KIND -> Comparator.comparing((PotLine line) -> kind(state, line));
            case LABEL -> Comparator.comparing((PotLine line) -> 0);
            case BLOOM -> Comparator.comparing(PotOrder::firstBloom);
        };
    }

    private static Due due(PotLine line) {
        return line.next().map(Job::due).orElse(Due.LATER);
    }

    private static long nextDay(PotLine line) {
        return line.next().map(job -> job.on().toEpochDay()).orElse(Long.MAX_VALUE);
    }

    private static long firstBloom(PotLine line) {
        return line.phases().stream()
                .filter(phase -> phase.stage() == Stage.IN_BLOOM)
                .mapToLong(phase -> phase.days().start().toEpochDay())
                .min()
                .orElse(Long.MAX_VALUE);
    }

    private static String place(State state, PotLine line) {
        return state.almanac()
                .pot(line.pots().get(0))
                .life()
                .stands()
                .map(stay -> new PotNames(state.journal()).place(stay.place()))
                .orElse("\uFFFF");
    }

    private static String kind(State state, PotLine line) {
        return state.journal()
                .varieties()
                .get(state.journal().pots().get(line.pots().get(0)).first().variety())
                .kind()
                .toString();
    }
}
