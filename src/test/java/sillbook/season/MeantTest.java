// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.JobKind;
import sillbook.model.Place;
import sillbook.model.Stage;
import sillbook.reckon.dates.Window;
import sillbook.season.Ahead.Ground;

/** What becomes of a plan that was adopted: its days are the likely ones, as far as the figures allow. */
class MeantTest {
    private final Winter house = winter().place("cellar", Place.Sort.CELLAR)
            .place("fridge", Place.Sort.FRIDGE)
            .place("sill", Place.Sort.WARM_SILL)
            .place("parlour", Place.Sort.WARM_SILL)
            .pot("T1", "Marrow Lane", "tulip");

    private PotNow pot(String today) {
        return house.on(today).pot(house.id("T1"));
    }

    private Job.OfPots job(String today) {
        return pot(today).next().orElseThrow();
    }

    private Ahead ahead(String today, Stage stage) {
        return pot(today).ahead().stream()
                .filter(one -> one.stage() == stage)
                .findFirst()
                .orElseThrow();
    }

    private List<Ground> grounds(String today) {
        return pot(today).ahead().get(0).restsOn();
    }

    @Test
    void itIsPottedOnThePlansDayAtThePlansPlace() {
        house.meant("20 sep", "fridge", "2 feb", "parlour");

        assertThat(job("1 sep").kind()).isEqualTo(JobKind.POT_UP);
        assertThat(job("1 sep").on()).isEqualTo(house.day("20 sep"));
        assertThat(job("1 sep").route().to().map(Destination::place)).contains(house.placeId("fridge"));
        assertThat(grounds("1 sep")).containsExactly(Ground.PLAN);
    }

    @Test
    void aDayOutsideThePottingTimeIsMovedToItsEdgeAndSaysSo() {
        house.meant("20 aug", "fridge", "2 feb", "parlour");

        assertThat(job("1 aug").on()).isEqualTo(house.day("2 sep"));
        assertThat(grounds("1 aug")).containsExactly(Ground.NEAR_PLAN);
    }

    @Test
    void aDaySaidAfterwardsGoesBeforeThePlan() {
        house.meant("20 sep", "fridge", "2 feb", "parlour").putOff("19 sep", JobKind.POT_UP, "27 sep");

        assertThat(job("19 sep").on()).isEqualTo(house.day("27 sep"));
    }

    @Test
    void itComesInOnThePlansDayWhichIsToldBeforeItIsPotted() {
        house.meant("20 sep", "fridge", "14 jan", "parlour");

        assertThat(ahead("1 sep", Stage.COOL_ROOM).window().likely()).isEqualTo(house.day("14 jan"));
        Window flowers = ahead("1 sep", Stage.IN_BLOOM).window();
        assertThat(flowers.likely()).isEqualTo(house.day("4 feb"));
        assertThat(flowers.earliest()).isBefore(flowers.likely());
        assertThat(flowers.latest()).isAfter(flowers.likely());
    }

    @Test
    void aDayBeforeItsColdIsHadIsNotKept() {
        house.meant("20 sep", "fridge", "1 dec", "parlour");

        assertThat(ahead("1 sep", Stage.COOL_ROOM).window().likely())
                .isEqualTo(house.day("20 sep").plusWeeks(15));
    }

    @Test
    void aPotInTheColdIsBroughtInOnThePlansDayToItsPlace() {
        house.potted("20 sep", "fridge")
                .meant("20 sep", "fridge", "14 jan", "parlour")
                .saw("10 jan", Winter.Look.roots());

        Job.OfPots job = job("11 jan");
        assertThat(job.kind()).isEqualTo(JobKind.BRING_IN);
        assertThat(job.on()).isEqualTo(house.day("14 jan"));
        assertThat(grounds("11 jan")).contains(Ground.PLAN);
    }

    @Test
    void aPlaceThatIsFullIsNotSuggested() {
        Winter full = winter().place("cellar", Place.Sort.CELLAR)
                .place("fridge", Place.Sort.FRIDGE)
                .room(1)
                .place("sill", Place.Sort.WARM_SILL)
                .pot("T2", "Marrow Lane", "tulip")
                .potted("10 sep", "fridge")
                .pot("T1", "Marrow Lane", "tulip")
                .meant("20 sep", "fridge", "14 jan", "sill");

        assertThat(full.on("19 sep")
                        .pot(full.id("T1"))
                        .next()
                        .orElseThrow()
                        .route()
                        .to()
                        .map(Destination::place))
                .contains(full.placeId("cellar"));
    }
}
