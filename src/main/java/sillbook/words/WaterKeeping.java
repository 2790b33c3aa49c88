// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import sillbook.model.Pot.Way;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Stage;
import sillbook.season.PotNow;

/** How the water of a pot is kept, by the way it is grown. A drained pot says nothing of its own. */
record WaterKeeping(PotNow pot, LengthUnit lengths) {
    private static final String PAPERWHITE = "paperwhite";

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
        if (!pot.life().stage().isBefore(Stage.COOL_ROOM)) {
            spirit(said);
        } else {
            said.add("Dark and cool until the roots are long. (common practice)");
        }
        return said;
    }

    /** Only of paperwhites alone, and before they flower: then it is too late. */
    private void spirit(List<String> said) {
        boolean isOfPaperwhites = pot.figures().varieties().stream()
                .allMatch(variety -> variety.kind().name().equals(PAPERWHITE));
        if (isOfPaperwhites && pot.life().stage().isBefore(Stage.IN_BLOOM)) {
            said.add(SpiritWords.keeping(lengths));
        }
    }
}
