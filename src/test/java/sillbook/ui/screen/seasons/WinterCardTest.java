// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.PastWindows;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;

class WinterCardTest {
    private static final Season WINTER = new Season(2025);
    private static final Journal JOURNAL =
            PastWinters.journal().with(List.of(new Edit.Put(new PastWindows(new Id<>(7, 7), WINTER, 13, 22, 160))));

    /** All were brought in on 20 Jan and flowered on 10 Feb. */
    private static final List<KeptWindow> KEPT = List.of(
            window("T1", LocalDate.of(2026, 2, 1), LocalDate.of(2026, 2, 8)),
            window("T2", LocalDate.of(2026, 2, 4), LocalDate.of(2026, 2, 12)),
            window("T3", LocalDate.of(2026, 2, 10), LocalDate.of(2026, 2, 14)),
            window("D1", LocalDate.of(2026, 2, 13), LocalDate.of(2026, 2, 20)),
            window("D2", LocalDate.of(2026, 2, 1), LocalDate.of(2026, 2, 8)));

    private final Desk desk =
            Desk.over(JOURNAL).press("6", "v", "s").press("Down", "Down").press("Enter");

    private static KeptWindow window(String pot, LocalDate earliest, LocalDate latest) {
        return new KeptWindow(
                JOURNAL.pot(WINTER, pot).orElseThrow().id(),
                Stage.IN_BLOOM,
                LocalDate.of(2026, 1, 20),
                earliest,
                earliest.plusDays(3),
                latest,
                "begun, after-cold (handbook)");
    }

    /** The answer the shell would give. */
    private static Desk answered(Desk desk, List<KeptWindow> kept) {
        return desk.tell(((Effect.ReadKept) desk.effects().get(0)).answer(kept));
    }

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    @Test
    void whatWasForetoldIsAskedOnceAndSaidWhenItComes() {
        assertThat(desk.effects()).containsExactly(new Effect.ReadKept(JOURNAL, Desk.TODAY));
        assertThat(all(desk))
                .contains(" Winter 2025-26")
                .doesNotContain("ates held")
                .doesNotContain("kept window");
        assertThat(all(answered(desk, KEPT)))
                .contains("Dates held 2 of 4 (15-85 %); 1 late and 1 early, half of them by 3 days or");
        assertThat(desk.effects()).isEmpty();
        desk.tell(new Message.Changed(new Snapshot(PastWinters.journal(), Desk.TODAY, 0, 0)));
        assertThat(desk.effects())
                .filteredOn(Effect.ReadKept.class::isInstance)
                .as("of another journal, asked anew")
                .hasSize(1);
    }

    @Test
    void wNamesWhatWasMissed() {
        assertThat(all(answered(desk, KEPT).press("w")))
                .contains("Why the dates of 2025-26 held 2 of 4")
                .contains("T1 first flower   1-8 Feb, came 10 Feb")
                .contains("2 days late")
                .contains("3 days early")
                .contains("those that were learnt")
                .contains("x 1.5");
        Golden.check("seasons-winter-why", desk.state());
    }

    @Test
    void whereNothingWasKeptItSaysSoAndWHasNothing() {
        assertThat(all(answered(desk, List.of()))).contains("No kept window whose day came.");
        assertThat(desk.press("w").line(22)).contains("no kept window whose day came");
        Golden.check("seasons-winter", desk.state());
    }
}
