// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.List;
import sillbook.model.Variety;

/** Forms by which a variety is marked for a season. */
final class MarkSheets {
    private static final Part BULBS = Part.of("Bulbs", 10, "", "How many bulbs of it you want.")
            .following()
            .wanted();
    private static final Part REASON = Part.of(
                    "Because", 60, "because ", "Why not, in your own words; or nothing, and Enter.")
            .following();

    private MarkSheets() {}

    static LineSheet choose(Variety variety, String season) {
        String name = "'" + variety.name() + "'";
        return LineSheet.of(
                "Choose " + name + " for " + season, "choose " + variety.name(), "choose " + name, List.of(BULBS));
    }

    static LineSheet setAside(Variety variety, String season) {
        String name = "'" + variety.name() + "'";
        return LineSheet.of(
                "Set " + name + " aside for " + season,
                "set aside " + variety.name(),
                "set aside " + name,
                List.of(REASON));
    }
}
