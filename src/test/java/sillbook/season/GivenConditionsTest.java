// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.handbook.FigureName;
import sillbook.handbook.Origin;
import sillbook.model.Findings;
import sillbook.model.Findings.Growth;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Kind;
import sillbook.model.Place.Sort;
import sillbook.season.LengthGiven.Part;
import sillbook.season.Winter.Look;

/** What own pots teach of buds, colour and full bloom, and what cold, room and the time of the year do to it. */
class GivenConditionsTest {
    private static final String TULIP = "tulip/Triumph";

    private static Winter house() {
        return winter().place("cellar", Sort.CELLAR)
                .place("stair window", Sort.COOL_ROOM)
                .usually(11, 13)
                .place("kitchen sill", Sort.WARM_SILL)
                .usually(19, 21)
                .place("back room", Sort.WARM_SILL)
                .usually(15, 17)
                .of(2025);
    }

    /** One that came in on 10 January after that many weeks of cold, straight into a warm room, and flowered. */
    private static Winter tulip(Winter winter, String label, String potted, String room, String flowered) {
        return winter.pot(label, "Marrow Lane", TULIP)
                .potted(potted, "cellar")
                .moved("10 jan", room)
                .flowered(flowered);
    }

    /** Of four, two had 13 weeks and 30 days, two 16 weeks and 24. */
    private static Winter fourTulips() {
        Winter winter = house();
        tulip(winter, "X1", "11 oct", "kitchen sill", "9 feb");
        tulip(winter, "X2", "20 sep", "kitchen sill", "3 feb");
        tulip(winter, "X3", "11 oct", "kitchen sill", "9 feb");
        tulip(winter, "X4", "20 sep", "kitchen sill", "3 feb");
        return winter.of(2026);
    }

    private static LengthGiven length(Winter winter, String label, PlantSpan span) {
        return length(winter.on("16 jan").pot(winter.id(label)), span);
    }

    private static LengthGiven length(PotNow pot, PlantSpan span) {
        return pot.figures().varieties().get(0).find(span).orElseThrow();
    }

    private static Part part(LengthGiven length, Condition condition) {
        return length.parts().stream()
                .filter(part -> part.condition() == condition)
                .findFirst()
                .orElseThrow();
    }

    private static Winter sixth(Winter winter, String potted, String room) {
        return winter.pot("T6", "Marrow Lane", TULIP).potted(potted, "cellar").moved("10 jan", room);
    }

    @Test
    void less_cold_makes_it_longer_as_it_did_before() {
        LengthGiven little = length(sixth(fourTulips(), "11 oct", "kitchen sill"), "T6", PlantSpan.TO_FIRST_FLOWER);
        LengthGiven much = length(sixth(fourTulips(), "20 sep", "kitchen sill"), "T6", PlantSpan.TO_FIRST_FLOWER);

        Part cold = part(little, Condition.COLD);
        assertThat(cold.here()).contains(13.0);
        assertThat(cold.usual()).contains(14.5);
        assertThat(cold.days()).isBetween(1.0, 3.0);
        assertThat(part(much, Condition.COLD).days()).isCloseTo(-cold.days(), within(1e-9));
        assertThat(little.next().centre() - much.next().centre()).isCloseTo(2 * cold.days(), within(1e-9));
        assertThat(little.window().likely()).isGreaterThan(much.window().likely());
    }

    @Test
    void a_pot_still_in_the_cold_is_taken_to_get_its_usual_weeks() {
        Winter winter = fourTulips().pot("T6", "Marrow Lane", TULIP).potted("20 dec", "cellar");

        LengthGiven length = length(winter, "T6", PlantSpan.TO_FIRST_FLOWER);
        assertThat(length.here().find(Condition.COLD)).contains(15.0);
        assertThat(length.here().find(Condition.ROOM)).isEmpty();
        assertThat(part(length, Condition.ROOM).days()).isZero();
    }

    @Test
    void one_that_is_not_potted_is_taken_to_be_as_the_others() {
        Winter winter = fourTulips().pot("T6", "Marrow Lane", TULIP);

        LengthGiven length = length(winter, "T6", PlantSpan.TO_FIRST_FLOWER);
        assertThat(length.here()).isEqualTo(Conditions.UNKNOWN);
        assertThat(length.next()).isEqualTo(length.length().asUsual().next());
    }

    @Test
    void rooms_count_where_their_temperature_is_known_and_the_cool_room_does_not_stand_for_the_warm() {
        Winter winter = house();
        tulip(winter, "X1", "1 oct", "kitchen sill", "29 jan");
        tulip(winter, "X2", "1 oct", "back room", "6 feb");
        tulip(winter, "X3", "1 oct", "kitchen sill", "29 jan");
        tulip(winter, "X4", "1 oct", "back room", "6 feb");
        winter.of(2026);

        LengthGiven warm = length(sixth(winter, "1 oct", "kitchen sill"), "T6", PlantSpan.TO_FIRST_FLOWER);
        assertThat(part(warm, Condition.ROOM).here()).contains(20.0);
        assertThat(part(warm, Condition.ROOM).days()).isBetween(-4.0, -1.0);
        winter.pot("T7", "Marrow Lane", TULIP).potted("1 oct", "cellar").moved("10 jan", "stair window");
        assertThat(length(winter, "T7", PlantSpan.TO_FIRST_FLOWER).here().find(Condition.ROOM))
                .isEmpty();
    }

    @Test
    void what_is_known_of_this_pot_alone_is_told_and_moves_nothing() {
        Winter winter = winter().place("cellar", Sort.CELLAR)
                .place("kitchen sill", Sort.WARM_SILL)
                .place("back room", Sort.WARM_SILL)
                .usually(15, 17)
                .of(2025);
        for (String label : List.of("X1", "X2", "X3")) {
            tulip(winter, label, "1 oct", "kitchen sill", "3 feb");
        }
        winter.of(2026);
        Part room = part(length(sixth(winter, "1 oct", "back room"), "T6", PlantSpan.TO_FIRST_FLOWER), Condition.ROOM);

        assertThat(room.here()).contains(16.0);
        assertThat(room.usual()).isEmpty();
        assertThat(room.days()).isZero();
    }

    @Test
    void pots_short_of_cold_are_left_out_and_named() {
        Winter winter = fourTulips().of(2025);
        tulip(winter, "X5", "1 dec", "kitchen sill", "20 mar");
        winter.of(2026);
        LearntLength length = length(sixth(winter, "20 sep", "kitchen sill"), "T6", PlantSpan.TO_FIRST_FLOWER)
                .length();

        assertThat(length.pots()).isEqualTo(4);
        assertThat(length.shortOfCold())
                .singleElement()
                .satisfies(one -> assertThat(one.pots()).containsExactly(winter.id("X5")));
        assertThat(length.outliers()).isEmpty();
    }

    /** Buds, colour and full bloom of three, on the 10th, 18th and 30th day after they came in. */
    private static Winter signs() {
        Winter winter = house();
        for (String label : List.of("X1", "X2", "X3")) {
            winter.pot(label, "Marrow Lane", TULIP)
                    .potted("1 oct", "cellar")
                    .moved("10 jan", "kitchen sill")
                    .saw("20 jan", new Look(Findings.NOTHING).growth(Growth.BUDS))
                    .saw("28 jan", new Look(Findings.NOTHING).growth(Growth.BUDS, Growth.COLOUR))
                    .flowered("5 feb")
                    .flowered("9 feb", BloomPoint.FULL_BLOOM, "Marrow Lane");
        }
        return winter.of(2026);
    }

    @Test
    void buds_colour_and_full_bloom_are_foretold_once_three_told_them() {
        Winter winter = sixth(signs(), "1 oct", "kitchen sill");
        List<SignAhead> signs = winter.on("16 jan").pot(winter.id("T6")).signs();

        assertThat(signs)
                .extracting(SignAhead::sign)
                .containsExactly(PlantSpan.TO_BUDS, PlantSpan.TO_COLOUR, PlantSpan.TO_FULL_BLOOM);
        assertThat(signs.get(0).window().likely()).isBetween(LocalDate.of(2027, 1, 18), LocalDate.of(2027, 1, 22));
        assertThat(signs.get(1).window().likely()).isBetween(LocalDate.of(2027, 1, 26), LocalDate.of(2027, 1, 29));
        assertThat(signs.get(2).window().likely()).isBetween(LocalDate.of(2027, 2, 5), LocalDate.of(2027, 2, 10));
        assertThat(winter.on("16 jan").whys(winter.id("T6")))
                .filteredOn(WhyLearnt.class::isInstance)
                .extracting(why -> ((WhyLearnt) why).length().span())
                .containsExactly(
                        PlantSpan.TO_FIRST_FLOWER, PlantSpan.TO_BUDS, PlantSpan.TO_COLOUR, PlantSpan.TO_FULL_BLOOM);
    }

    @Test
    void a_sign_that_was_seen_is_foretold_no_more_and_one_that_is_late_comes_today_at_the_earliest() {
        Winter winter = sixth(signs(), "1 oct", "kitchen sill");
        winter.saw("15 jan", new Look(Findings.NOTHING).growth(Growth.COLOUR));

        assertThat(winter.on("16 jan").pot(winter.id("T6")).signs())
                .extracting(SignAhead::sign)
                .containsExactly(PlantSpan.TO_FULL_BLOOM);
        Winter late = sixth(signs(), "1 oct", "kitchen sill");
        assertThat(late.on("25 jan").pot(late.id("T6")).signs().get(0).window().likely())
                .isEqualTo(LocalDate.of(2027, 1, 25));
        assertThat(late.on("9 jan").pot(late.id("T6")).signs()).isEmpty();
    }

    @Test
    void where_the_handbooks_flower_was_asked_for_no_sign_is_foretold() {
        Winter winter = sixth(signs(), "1 oct", "kitchen sill").handbookFor(Kind.of("tulip"), FigureName.AFTER_COLD);

        assertThat(winter.on("16 jan").pot(winter.id("T6")).signs()).isEmpty();
    }

    /** Three winters of one amaryllis, in flower 50, 45 and 47 days after it was potted or woken. */
    @Test
    void of_a_plant_that_lives_on_every_winter_counts() {
        Winter winter = winter().of(2023).place("parlour", Sort.WARM_SILL);
        winter.pot("A1", "Umbrella Street", "amaryllis")
                .potted("20 nov", "parlour")
                .flowered("9 jan")
                .pastBloom("30 jan");
        winter.of(2024).then("A1").cared("1 oct", Care.RESTED).cared("1 dec", Care.WOKEN);
        winter.flowered("15 jan").pastBloom("5 feb");
        winter.of(2025).then("A1").cared("1 oct", Care.RESTED).cared("1 dec", Care.WOKEN);
        winter.flowered("17 jan").pastBloom("8 feb");
        winter.of(2026).then("A1").cared("1 oct", Care.RESTED).cared("1 jan", Care.WOKEN);

        PotNow now = winter.on("16 jan").pot(winter.id("A1"));
        LearntLength length = length(now, PlantSpan.TO_FIRST_FLOWER).length();
        assertThat(length.own()).extracting(OwnLength::days).containsExactly(50.0, 45.0, 47.0);
        assertThat(length.own())
                .extracting(one -> one.under().find(Condition.COLD))
                .containsOnly(Optional.empty());
        assertThat(now.figures().find(FigureName.AFTER_COLD).orElseThrow().origin())
                .isEqualTo(Origin.LEARNT_FOR_VARIETY);
        assertThat(length(now, PlantSpan.IN_BLOOM).length().own()).hasSize(3);
    }

    @Test
    void conditions_are_known_as_exactly_as_they_can_be() {
        Conditions near = Conditions.of(Optional.of(13.2), Optional.of(16.4), Optional.of(6.51));

        assertThat(near.find(Condition.COLD)).contains(13.0);
        assertThat(near.find(Condition.ROOM)).contains(16.0);
        assertThat(near.find(Condition.SEASON).orElseThrow()).isCloseTo(19.5 / 3, within(0.17));
        assertThat(Conditions.mean(List.of(near, new Conditions(Map.of(Condition.COLD, 15.0))))
                        .find(Condition.COLD))
                .contains(14.0);
        assertThat(Conditions.mean(List.of())).isEqualTo(Conditions.UNKNOWN);
    }
}
