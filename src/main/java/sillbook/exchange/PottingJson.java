// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import sillbook.words.PottingSteps;
import sillbook.words.Terms;

/** The steps at the bench as JSON. */
public final class PottingJson {
    private PottingJson() {}

    /** The document of {@code sillbook potting --json}. */
    public static String write(PottingSteps steps, List<String> cautions) {
        return Answer.write(new Fields()
                .text("kind", steps.kind().toString())
                .text("way", Terms.WAYS.say(steps.way()))
                .list("steps", steps.steps(), PottingJson::step)
                .list("perPotOf15Cm", steps.perPot(), PottingJson::step)
                .texts("cautions", cautions));
    }

    private static Fields step(PottingSteps.Step step) {
        return new Fields().text("says", step.says()).texts("sources", step.sources());
    }
}
