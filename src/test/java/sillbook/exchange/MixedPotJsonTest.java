// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Place.Sort;
import sillbook.season.Outlook;
import sillbook.season.Winter;
import sillbook.words.Provisos;

class MixedPotJsonTest {
    private static JsonNode plantings(Winter told) throws JsonProcessingException {
        Outlook outlook = told.on("12 jan");
        String document = PotsJson.one(told.journal(), outlook, outlook.pot(told.id("T1")), Provisos.NONE);
        return new ObjectMapper().readTree(document).get("pot").get("plantings");
    }

    @Test
    void varietiesThatShareAPotHaveDaysOfTheirOwn() throws JsonProcessingException {
        JsonNode plantings = plantings(winter().place("sill", Sort.WARM_SILL)
                .mixed("T1", "Marrow Lane", "tulip", "Night Marbles", "grape hyacinth")
                .potted("14 sep", "sill")
                .flowered("20 dec", BloomPoint.FIRST_FLOWER, "Night Marbles")
                .flowered("2 jan", BloomPoint.FIRST_FLOWER, "Marrow Lane")
                .flowered("5 jan", BloomPoint.FULL_BLOOM, "Marrow Lane")
                .flowered("8 jan", BloomPoint.PAST_BLOOM, "Night Marbles"));

        assertThat(plantings.at("/0/firstFlower/likely").asText()).isEqualTo("2027-01-02");
        assertThat(plantings.at("/0/fullBloom/likely").asText()).isEqualTo("2027-01-05");
        assertThat(plantings.at("/0/pastBloom").isNull()).isTrue();
        assertThat(plantings.at("/1/firstFlower/likely").asText()).isEqualTo("2026-12-20");
        assertThat(plantings.at("/1/fullBloom").isNull()).isTrue();
        assertThat(plantings.at("/1/pastBloom/likely").asText()).isEqualTo("2027-01-08");
    }

    @Test
    void whatIsWrittenOfThePotAsAWholeIsOfNoVarietyAlone() throws JsonProcessingException {
        JsonNode plantings = plantings(winter().place("sill", Sort.WARM_SILL)
                .mixed("T1", "Marrow Lane", "tulip", "Night Marbles", "grape hyacinth")
                .potted("14 sep", "sill")
                .flowered("2 jan"));

        assertThat(plantings).allMatch(planting -> planting.get("firstFlower").isNull());
    }

    @Test
    void oneVarietyAloneHasThePotsDays() throws JsonProcessingException {
        JsonNode plantings = plantings(winter().place("sill", Sort.WARM_SILL)
                .pot("T1", "Marrow Lane", "tulip")
                .potted("14 sep", "sill")
                .flowered("2 jan"));

        assertThat(plantings.at("/0/firstFlower/likely").asText()).isEqualTo("2027-01-02");
    }
}
