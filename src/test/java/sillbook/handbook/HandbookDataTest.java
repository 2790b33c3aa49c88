// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.model.Kind;

/** What every row of the data files must keep to. */
class HandbookDataTest {
    private final Handbook handbook = Handbook.standard();
    private final List<Figure> used = Pages.figures("figures.tsv", text("figures.tsv"));
    private final List<Figure> published = Pages.figures("published.tsv", text("published.tsv"));
    private final List<Remark> remarks = Pages.remarks("remarks.tsv", text("remarks.tsv"));

    private static String text(String file) {
        try (InputStream in = Handbook.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<String> namedSources() {
        List<String> keys = new ArrayList<>();
        used.forEach(figure -> keys.addAll(figure.sources()));
        published.forEach(figure -> keys.addAll(figure.sources()));
        remarks.forEach(remark -> keys.addAll(remark.sources()));
        for (KindEntry kind : handbook.kinds()) {
            keys.addAll(kind.sources());
            handbook.groups(kind.kind()).forEach(group -> keys.addAll(group.sources()));
        }
        return keys;
    }

    @Test
    void every_source_named_is_listed_and_every_source_listed_is_named() {
        Set<String> listed = handbook.sources().stream().map(Source::key).collect(Collectors.toSet());

        assertThat(listed).hasSameSizeAs(handbook.sources());
        assertThat(new HashSet<>(namedSources())).isEqualTo(listed);
    }

    @Test
    void every_source_but_common_practice_says_where_it_is() {
        assertThat(handbook.sources()).allSatisfy(source -> {
            assertThat(source.institution()).isNotBlank();
            assertThat(source.title()).isNotBlank();
            assertThat(source.locator().isEmpty()).isEqualTo(source.grade() == Source.Grade.COMMON_PRACTICE);
        });
    }

    @Test
    void low_typical_and_high_are_in_order_in_every_row() {
        assertThat(Stream.of(used, published).flatMap(List::stream))
                .hasSizeGreaterThan(150)
                .allSatisfy(figure -> {
                    assertThat(figure.low()).isLessThanOrEqualTo(figure.range().typical());
                    assertThat(figure.range().typical()).isLessThanOrEqualTo(figure.high());
                });
    }

    @Test
    void every_row_is_of_a_kind_and_class_that_are_listed() {
        Set<Kind> known = new HashSet<>(Set.of(Handbook.HARDY, Handbook.EVERY));
        for (KindEntry kind : handbook.kinds()) {
            known.add(kind.kind());
            handbook.groups(kind.kind()).forEach(group -> known.add(group.kind()));
        }

        assertThat(used).extracting(Figure::kind).allMatch(known::contains);
        assertThat(published).extracting(Figure::kind).allMatch(known::contains);
        assertThat(remarks).extracting(Remark::kind).allMatch(known::contains);
    }

    @Test
    void only_the_typical_kinds_that_need_cold_have_figures_of_it() {
        for (KindEntry kind : handbook.kinds()) {
            assertThat(handbook.figure(kind.kind(), FigureName.COLD).isPresent())
                    .isEqualTo(kind.needsCold());
            assertThat(handbook.figure(kind.kind(), FigureName.AFTER_COLD)).isPresent();
        }
    }

    @Test
    void a_figure_that_single_sources_give_lies_within_what_they_span() {
        for (Figure figure : used) {
            List<Figure> rows = handbook.published(figure.kind(), figure.name()).stream()
                    .filter(row -> row.kind().equals(figure.kind()))
                    .toList();
            if (!rows.isEmpty() && figure.name() == FigureName.COLD) {
                assertThat(figure.range().typical())
                        .as("%s", figure.kind())
                        .isBetween(
                                rows.stream().mapToDouble(Figure::low).min().orElseThrow(),
                                rows.stream().mapToDouble(Figure::high).max().orElseThrow());
            }
        }
    }

    @Test
    void remarks_are_whole_sentences_and_cautions_send_to_those_who_know() {
        assertThat(remarks).extracting(Remark::says).allMatch(says -> says.endsWith(".") || says.endsWith(")"));
        assertThat(remarks)
                .filteredOn(remark -> remark.topic() == Topic.CAUTION_SKIN && remark.sureness() == Sureness.GOOD)
                .allMatch(remark -> remark.says().contains("doctor"));
        for (KindEntry kind : handbook.kinds()) {
            assertThat(handbook.remarks(kind.kind(), Topic.CAUTION_PEOPLE))
                    .anyMatch(remark -> remark.says().contains("poison centre"));
        }
    }

    @Test
    void every_figure_name_and_topic_has_a_key_of_its_own_and_a_row() {
        for (FigureName name : FigureName.values()) {
            assertThat(FigureName.of(name.key())).contains(name);
            assertThat(used).extracting(Figure::name).contains(name);
        }
        for (Topic topic : Topic.values()) {
            assertThat(Topic.of(topic.key())).contains(topic);
            assertThat(remarks).extracting(Remark::topic).contains(topic);
        }
        assertThat(FigureName.of("colder")).isEmpty();
        assertThat(Topic.of("weather")).isEmpty();
    }

    @Test
    void what_the_names_and_others_of_a_kind_say_leads_back_to_it() {
        for (KindEntry kind : handbook.kinds()) {
            assertThat(handbook.find(kind.kind().name())).contains(kind.kind());
            assertThat(handbook.find(kind.plural())).contains(kind.kind());
            assertThat(kind.otherNames())
                    .allMatch(name -> handbook.find(name).equals(java.util.Optional.of(kind.kind())));
            for (GroupEntry group : handbook.groups(kind.kind())) {
                assertThat(handbook.find(group.kind().toString())).contains(group.kind());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"figures.tsv", "published.tsv", "remarks.tsv", "kinds.tsv", "classes.tsv", "sources.tsv"})
    void the_files_hold_plain_text_without_blanks_at_the_ends_of_cells(String file) {
        assertThat(text(file).lines()).allSatisfy(line -> {
            assertThat(line)
                    .isNotEmpty()
                    .doesNotEndWith(" ")
                    .doesNotEndWith("\t")
                    .doesNotContain("\t ", " \t");
            assertThat(line.chars()).allMatch(letter -> letter == '\t' || (letter >= ' ' && letter < 127));
        });
    }
}
