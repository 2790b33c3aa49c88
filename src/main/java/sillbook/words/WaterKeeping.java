// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sillbook.model.Pot.Way;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Stage;
import sillbook.season.PotFigures;
import sillbook.season.PotNow;

/** How the water of a pot is kept, by the way it is grown. A drained pot says nothing of its own. */
record WaterKeeping(PotNow pot, LengthUnit lengths, LocalDate today) {
    /** Paperwhites stand dark and cool for one to two weeks (common practice). */
    private static final int ROOTING_DAYS = 14;

    List<String> say() {
        if (!isGrowing()) {
            return List.of();
        }
        Way way = pot.life().pot().way();
        if (way == Way.BOWL) {
            return List.of("After watering tip the bowl until what is too much has run out. (common practice)");
        }
        return way.isOverWater() ? overWater() : List.of();
    }

    private boolean isGrowing() {
        return pot.life().isGrowing() && pot.life().stage().isBefore(Stage.AFTER_BLOOM);
    }

    private List<String> overWater() {
        List<String> said = new ArrayList<>();
        said.add(String.join(
                " ",
                PottingSteps.waterLevel().stream()
                        .map(PottingSteps.Step::marked)
                        .toList()));
        said.add("Top it up as it falls; change it when it is cloudy. (common practice)");
        if (isRooting()) {
            said.add("Dark and cool until the roots are long. (common practice)");
        }
        if (isForSpirit()) {
            said.add(SpiritWords.keeping(lengths));
        }
        return said;
    }

    /** In the cold; or, of what needs none, in the first two weeks. */
    private boolean isRooting() {
        boolean isNew = pot.life()
                .potted()
                .filter(day -> !today.isAfter(day.likely().plusDays(ROOTING_DAYS)))
                .isPresent();
        return pot.life().stage().isBefore(Stage.COOL_ROOM)
                || (isNew && !pot.figures().needsCold());
    }

    /** Of paperwhites alone, and before they flower: then it is too late. */
    private boolean isForSpirit() {
        return !pot.life().stage().isBefore(Stage.COOL_ROOM)
                && pot.life().stage().isBefore(Stage.IN_BLOOM)
                && SpiritWords.isFor(pot.figures().varieties().stream().map(PotFigures.OfVariety::kind));
    }
}
