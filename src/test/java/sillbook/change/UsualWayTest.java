// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Container;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.PottingMix;
import sillbook.model.UsualWay;

/** The grower's usual ways of filling pots. */
class UsualWayTest {
    private static final Container PAN = new Container(
            new Id<>(4, 1), "pan 15 cm", Container.Shape.PAN, Optional.empty(), Optional.empty(), 6, 0, "");
    private static final PottingMix MIX = new PottingMix(new Id<>(4, 2), "sill mix", List.of(), "");

    private final Bench bench = new Bench();

    private static UsualWay way(long id, String name, Potting.Holes holes) {
        return new UsualWay(
                new Id<>(5, id),
                name,
                Optional.of(PAN.id()),
                Optional.empty(),
                Optional.of(MIX.id()),
                holes,
                Potting.Depth.TIPS_LEVEL,
                "grit",
                "");
    }

    private void writeDown(UsualWay way) {
        bench.done(new WriteDown(PAN));
        bench.done(new WriteDown(MIX));
        assertThat(bench.done(new WriteDown(way)).name()).isEqualTo("usual way kitchen pans written down");
    }

    @Test
    void aPotKeepsWhatTheWayWasWhenItWasFilled() {
        UsualWay before = way(1, "kitchen pans", Potting.Holes.MESH);
        writeDown(before);
        bench.done(new PotUp(
                Bench.WINTER,
                List.of(new Pot.Planting(Bench.MARROW_LANE.id(), 5, Optional.empty())),
                1,
                "T",
                Pot.Way.DRAINED,
                before.container(),
                before.across(),
                before.pottingMix(),
                before.potting(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                ""));
        assertThat(bench.done(new WriteDown(way(1, "kitchen pans", Potting.Holes.PAPER)))
                        .name())
                .isEqualTo("usual way kitchen pans corrected");

        Potting kept = bench.journal.pots().get(bench.pot("T1")).potting();
        assertThat(kept).isEqualTo(new Potting("kitchen pans", Potting.Holes.MESH, Potting.Depth.TIPS_LEVEL, "grit"));
        bench.done(new Remove(way(1, "kitchen pans", Potting.Holes.PAPER)));
        assertThat(bench.journal.usualWays().isEmpty()).isTrue();
    }

    @Test
    void aNameIsOfOneWayOnly() {
        writeDown(way(1, "kitchen pans", Potting.Holes.MESH));
        assertThat(bench.refused(new WriteDown(way(2, "Kitchen Pans", Potting.Holes.OPEN))))
                .startsWith("There is a usual way kitchen pans already.");
    }

    @Test
    void whatAWayNamesStays() {
        writeDown(way(1, "kitchen pans", Potting.Holes.MESH));
        assertThat(bench.refused(new Remove(PAN))).contains("still used by usual way kitchen pans");
        assertThat(bench.refused(new Remove(MIX))).contains("still used by usual way kitchen pans");
    }

    @Test
    void aWayHasAName() {
        assertThatThrownBy(() -> way(1, " ", Potting.Holes.MESH)).hasMessage("a usual way has a name");
    }
}
