// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.handbook.KindEntry;
import sillbook.handbook.Remark;
import sillbook.handbook.Source;
import sillbook.model.Kind;

/** The page of cautions holds every caution of the handbook, and every source of one. */
class CautionsPageTest {
    private static final Path PAGE = Path.of("docs/cautions.md");
    private static final Handbook HANDBOOK = Handbook.standard();

    /** Each once: those for every bulb first, then kind by kind. */
    private static List<Remark> cautions() {
        return Stream.concat(
                        Stream.of(Handbook.EVERY), HANDBOOK.kinds().stream().map(KindEntry::kind))
                .flatMap((Kind kind) -> HANDBOOK.cautions(kind).stream()
                        .filter(remark -> remark.kind().equals(kind)))
                .toList();
    }

    private static String row(Remark remark) {
        String topic = remark.topic().key().replace("caution-", "");
        return Blocks.row(List.of(
                remark.kind().toString(), topic, remark.says(), "`" + String.join("` `", remark.sources()) + "`"));
    }

    private static String row(Source source) {
        return Blocks.row(List.of(
                "`" + source.key() + "`",
                source.institution(),
                source.title(),
                source.locator(),
                source.grade() == Source.Grade.COMMON_PRACTICE
                        ? ""
                        : source.grade().name()));
    }

    private static Page with(Page page, String remark, Stream<String> rows) {
        List<String> table = new ArrayList<>(Blocks.heading(page, remark));
        rows.forEach(table::add);
        return new Page(page.file(), Blocks.retabled(page, remark, table));
    }

    @Test
    void everyCautionAndEverySourceOfOneStandsOnThePage() {
        Page page = Page.of(PAGE);
        Page said =
                with(page, "cautions: written by a test", cautions().stream().map(CautionsPageTest::row));
        Page whole = with(
                said,
                "sources of cautions: written by a test",
                cautions().stream()
                        .flatMap(remark -> remark.sources().stream())
                        .distinct()
                        .sorted()
                        .map(key -> row(HANDBOOK.source(key).orElseThrow())));

        assertThat(cautions()).hasSizeGreaterThan(25);
        assertThat(page.rewritten(whole.lines()).lines()).isEqualTo(whole.lines());
    }
}
