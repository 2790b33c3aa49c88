// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every link from a page to another leads somewhere, also to the heading it names; every page of the docs can be reached from README. */
class LinksTest {
    /** The aim of {@code [words](aim)}. */
    private static final Pattern LINK = Pattern.compile("\\]\\(<?([^)\\s>]+)>?\\)");

    private static final Pattern CODE = Pattern.compile("(?ms)^```.*?^```$|`[^`\\n]*`");

    static Stream<Page> pages() {
        return Page.all();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyLinkLeadsSomewhere(Page page) {
        assertThat(aims(page)).allSatisfy(aim -> {
            assertThat(Files.exists(file(page, aim))).as(aim).isTrue();
            if (aim.contains("#")) {
                assertThat(anchors(Page.of(file(page, aim)))).as(aim).contains(aim.substring(aim.indexOf('#') + 1));
            }
        });
    }

    @Test
    void everyPageCanBeReachedFromTheFirst() {
        Set<Path> reached = Stream.of(Page.readme(), Page.of(Path.of("docs/README.md")))
                .flatMap(page ->
                        Stream.concat(Stream.of(page.file()), aims(page).map(aim -> file(page, aim))))
                .collect(toSet());

        assertThat(Page.all().map(Page::file).filter(file -> !file.startsWith("docs/decisions")))
                .isSubsetOf(reached);
    }

    /** Where its links go within the repository, as written. */
    private static Stream<String> aims(Page page) {
        return LINK.matcher(CODE.matcher(page.text()).replaceAll(""))
                .results()
                .map(link -> link.group(1))
                .filter(aim -> !aim.matches("[a-z]+:.*"));
    }

    private static Path file(Page page, String aim) {
        String path = aim.replaceFirst("#.*", "");
        return path.isEmpty() ? page.file() : page.file().resolveSibling(path).normalize();
    }

    /** The names that headings are reached by: their words in lower case, joined by hyphens, without other signs. */
    private static List<String> anchors(Page page) {
        return page.lines().stream()
                .filter(line -> line.startsWith("#"))
                .map(line -> line.replaceFirst("#+ ", "").toLowerCase(Locale.ROOT))
                .map(words -> words.replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-'))
                .toList();
    }
}
