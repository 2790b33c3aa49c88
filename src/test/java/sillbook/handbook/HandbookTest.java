// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.model.Kind;

class HandbookTest {
    private static final Kind TULIP = Kind.of("tulip");
    private static final Kind TRIUMPH = new Kind("tulip", "Triumph");

    private final Handbook handbook = Handbook.standard();

    /** Each line of the file names the sources a figure was weighed from, and what each says. */
    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvFileSource(resources = "compared.csv", delimiter = ';')
    void the_figures_used_are_those_weighed_from_the_sources(
            String kind, String group, String figure, double low, Double typical, double high, String sources) {
        Kind asked = new Kind(kind, group == null ? "" : group);

        Figure used =
                handbook.figure(asked, FigureName.of(figure).orElseThrow()).orElseThrow();

        assertThat(used.low()).isEqualTo(low);
        assertThat(used.typical()).isEqualTo(Optional.ofNullable(typical));
        assertThat(used.high()).isEqualTo(high);
        assertThat(sources).isNotBlank();
    }

    @Test
    void a_figure_is_looked_for_with_the_class_then_with_the_kind_then_among_all_hardy_bulbs() {
        assertThat(handbook.figure(TRIUMPH, FigureName.HEIGHT).orElseThrow().kind())
                .isEqualTo(TRIUMPH);
        assertThat(handbook.figure(TRIUMPH, FigureName.COLD).orElseThrow().kind())
                .isEqualTo(TULIP);
        assertThat(handbook.figure(TRIUMPH, FigureName.AFTER_COLD).orElseThrow().kind())
                .isEqualTo(Handbook.HARDY);
    }

    @Test
    void what_holds_for_hardy_bulbs_does_not_hold_for_those_without_cold() {
        assertThat(handbook.figure(Kind.of("paperwhite"), FigureName.COLD)).isEmpty();
        assertThat(handbook.figure(Kind.of("amaryllis"), FigureName.COOL_ROOM)).isEmpty();
        assertThat(handbook.remarks(Kind.of("amaryllis"), Topic.TOO_LITTLE_COLD))
                .isEmpty();
    }

    @Test
    void a_gap_in_what_is_published_is_empty() {
        assertThat(handbook.figure(TULIP, FigureName.IN_BLOOM)).isEmpty();
        assertThat(handbook.figure(Kind.of("squill"), FigureName.PER_POT)).isEmpty();
        assertThat(handbook.published(Kind.of("squill"), FigureName.COLD)).isEmpty();
    }

    @Test
    void a_kind_it_does_not_know_has_only_what_holds_for_every_bulb() {
        Kind camas = Kind.of("camas");

        assertThat(handbook.entry(camas)).isEmpty();
        assertThat(handbook.figure(camas, FigureName.AFTER_COLD)).isEmpty();
        assertThat(handbook.groups(camas)).isEmpty();
        assertThat(handbook.cautions(camas)).extracting(Remark::kind).containsOnly(Handbook.EVERY);
    }

    @Test
    void sources_that_disagree_are_shown_one_by_one() {
        List<Figure> rows = handbook.published(TRIUMPH, FigureName.COLD);

        assertThat(rows).hasSizeGreaterThan(10).allMatch(row -> row.sources().size() == 1);
        assertThat(rows).extracting(Figure::low).contains(9.0, 14.0, 15.0);
        assertThat(rows).extracting(Figure::name).containsOnly(FigureName.COLD);
    }

    @Test
    void a_range_without_a_typical_value_has_its_middle() {
        Figure height =
                handbook.figure(new Kind("tulip", "Greigii"), FigureName.HEIGHT).orElseThrow();

        assertThat(height.typical()).isEmpty();
        assertThat(height.range().typical()).isEqualTo(35.5);
        assertThat(height.unit()).isEqualTo(Unit.CENTIMETRES);
    }

    @ParameterizedTest
    @CsvSource({
        "tulip, T, true",
        "hyacinth, H, true",
        "prepared hyacinth, H, true",
        "daffodil, D, true",
        "crocus, C, true",
        "grape hyacinth, M, true",
        "dwarf iris, I, true",
        "snowdrop, S, true",
        "squill, Q, true",
        "glory-of-the-snow, G, true",
        "paperwhite, P, false",
        "amaryllis, A, false"
    })
    void every_kind_has_its_letter_and_says_whether_it_needs_cold(String kind, String letter, boolean needsCold) {
        KindEntry entry = handbook.entry(new Kind(kind, "any")).orElseThrow();

        assertThat(entry.letter()).isEqualTo(letter);
        assertThat(entry.needsCold()).isEqualTo(needsCold);
        assertThat(handbook.kinds()).hasSize(12);
    }

    /** Each row names the sources it was taken from. */
    @ParameterizedTest
    @CsvFileSource(resources = "in-pots.csv", delimiter = ';')
    void classes_suit_pots_as_the_sources_say(String kind, String group, String suits, String sources) {
        Optional<Suits> said = group == null
                ? handbook.entry(Kind.of(kind)).map(KindEntry::suits)
                : handbook.groups(Kind.of(kind)).stream()
                        .filter(entry -> entry.kind().group().equals(group))
                        .map(GroupEntry::suits)
                        .findFirst();

        assertThat(sources).isNotBlank();
        assertThat(said).contains(Suits.valueOf(suits));
    }

    @Test
    void of_the_other_classes_nothing_is_said() {
        assertThat(handbook.groups(TRIUMPH)).hasSize(16);
        assertThat(handbook.groups(TRIUMPH))
                .filteredOn(entry -> entry.suits() != Suits.NO_WORD)
                .hasSize(9);
    }

    @Test
    void daffodils_are_grouped_by_division_and_by_height() {
        assertThat(handbook.groups(Kind.of("daffodil")))
                .extracting(entry -> entry.kind().group())
                .containsExactly(
                        "1",
                        "2",
                        "3",
                        "4",
                        "5",
                        "6",
                        "7",
                        "8",
                        "9",
                        "10",
                        "11",
                        "11a",
                        "11b",
                        "12",
                        "13",
                        "short",
                        "long-stemmed");
        assertThat(handbook.figure(new Kind("daffodil", "short"), FigureName.HEIGHT)
                        .orElseThrow()
                        .low())
                .isEqualTo(30);
    }

    @ParameterizedTest
    @CsvSource({
        "tulip, tulip, ''",
        "TULIPS, tulip, ''",
        "' Tulip   triumph ', tulip, Triumph",
        "tulip single early, tulip, Single Early",
        "tulips darwinhybrid, tulip, Darwin Hybrid",
        "tulip lily flowered, tulip, Lily-flowered",
        "tulip class parrot, tulip, Parrot",
        "tulip other species, tulip, Species",
        "daffodils 6, daffodil, 6",
        "Daffodil division 11b, daffodil, 11b",
        "narcissus div. 1, daffodil, 1",
        "daffodil cyclamineus, daffodil, 6",
        "narcissi, daffodil, ''",
        "hyacinths, hyacinth, ''",
        "hyacinth prepared, prepared hyacinth, ''",
        "Prepared Hyacinths, prepared hyacinth, ''",
        "muscari, grape hyacinth, ''",
        "grape-hyacinth, grape hyacinth, ''",
        "crocuses, crocus, ''",
        "dwarf irises, dwarf iris, ''",
        "iris reticulata, dwarf iris, ''",
        "scilla, squill, ''",
        "Glory of the snow, glory-of-the-snow, ''",
        "chionodoxa, glory-of-the-snow, ''",
        "paper whites, paperwhite, ''",
        "hippeastrum, amaryllis, ''"
    })
    void a_kind_is_found_as_people_type_it(String typed, String kind, String group) {
        assertThat(handbook.find(typed)).contains(new Kind(kind, group));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " - ",
                "tulipa x",
                "tulipwood",
                "tulip marrow",
                "daffodil 14",
                "daffodil 1 1 1",
                "autumn crocus",
                "colchicum",
                "iris",
                "hyacinth triumph",
                "class"
            })
    void what_is_no_kind_is_not_found(String typed) {
        assertThat(handbook.find(typed)).isEmpty();
    }

    @Test
    void every_kind_has_cautions_for_pets_its_own_first() {
        for (KindEntry entry : handbook.kinds()) {
            List<Remark> cautions = handbook.cautions(entry.kind());

            assertThat(cautions.get(0).kind()).isEqualTo(entry.kind());
            assertThat(cautions).extracting(Remark::topic).contains(Topic.CAUTION_PETS, Topic.CAUTION_DUST);
            assertThat(cautions).allMatch(remark -> remark.topic().isCaution());
        }
    }

    @Test
    void the_crocus_is_told_from_the_autumn_crocus() {
        assertThat(handbook.remarks(Kind.of("crocus"), Topic.CAUTION_LOOKALIKE))
                .singleElement()
                .satisfies(remark -> assertThat(remark.says()).contains("Colchicum"));
    }

    @Test
    void aftercare_shows_the_general_and_the_kinds_own() {
        assertThat(handbook.remarks(Kind.of("hyacinth"), Topic.AFTERCARE))
                .extracting(remark -> remark.kind().name())
                .containsSubsequence("hyacinth", "hardy")
                .containsOnly("hyacinth", "hardy");
        assertThat(handbook.remarks(Kind.of("paperwhite"), Topic.AFTERCARE)).hasSize(2);
    }

    @Test
    void a_source_is_found_by_its_key() {
        assertThat(handbook.source("oklahoma-1994").orElseThrow().title()).contains("HortScience");
        assertThat(handbook.source("nobody")).isEmpty();
    }

    @Test
    void each_file_is_read_once_and_only_when_asked_for() {
        List<String> read = new ArrayList<>();
        Handbook counting = new Handbook(name -> {
            read.add(name);
            return "key\tinstitution\ttitle\tlocator\tgrade\na\tb\tc\td\tA\n";
        });

        assertThat(read).isEmpty();
        assertThat(counting.sources()).hasSize(1);
        assertThat(counting.source("a")).isPresent();
        assertThat(read).containsExactly("sources.tsv");
    }

    @Test
    void two_figures_for_one_are_refused() {
        String line = "tulip\t\tcold\t1\t2\t3\tweeks\ta\tgood\n";
        Map<String, String> files = Map.of(
                "kinds.tsv",
                "kind\tplural\tletter\tcold\tothers\tsource\tsuits\n",
                "figures.tsv",
                "kind\tclass\tfigure\tlow\ttypical\thigh\tunit\tsource\tsureness\tnote\n" + line + line);
        Handbook twice = new Handbook(files::get);

        assertThatThrownBy(() -> twice.figure(TULIP, FigureName.COLD))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("two figures used for one: tulip, cold");
    }

    @Test
    void a_file_the_program_lacks_is_named() {
        assertThatThrownBy(() -> Handbook.resource("orchids.tsv"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("orchids.tsv");
    }
}
