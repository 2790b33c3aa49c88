// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What pages show of a console is what a console shows. A block marked {@code console} holds lines to type, after {@code $}, and under
 * each what it prints; a heading or bold words that hold a day set the day. {@code -Dsillbook.goldens=write} prints the answers anew.
 */
class ConsoleTest {
    private static final String OPENS = "```console";
    private static final String CLOSES = "```";
    private static final String DEMO = "<!-- the demo's journal: laid by a test -->";
    private static final String PROMPT = "$ ";
    private static final Pattern DAY =
            Pattern.compile("(?:^#+ .*|.*\\*\\*[^*]*)\\b([A-Z][a-z]+day \\d{1,2} [A-Z][a-z]+ \\d{4})\\b.*");
    private static final DateTimeFormatter DAYS = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.UK);

    @TempDir
    private Path home;

    static Stream<Page> pages() {
        return Page.all().filter(page -> page.lines().contains(OPENS));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void whatIsTypedPrintsWhatThePageSays(Page page) {
        List<String> retyped = retyped(page);

        assertThat(page.rewritten(retyped).lines()).isEqualTo(retyped);
    }

    private List<String> retyped(Page page) {
        Shell shell = new Shell(home);
        List<String> anew = new ArrayList<>();
        boolean isInside = false;
        for (String line : page.lines()) {
            boolean isPrinted = isInside && !line.equals(CLOSES) && !line.startsWith(PROMPT);
            isInside = isInside ? !line.equals(CLOSES) : line.equals(OPENS);
            if (!isPrinted) {
                anew.add(line);
            }
            if (line.equals(DEMO)) {
                shell.layDemo();
            } else if (isInside && line.startsWith(PROMPT)) {
                anew.addAll(shell.type(line.substring(PROMPT.length())));
            } else if (!isInside) {
                day(line).ifPresent(shell::goOnTo);
            }
        }
        return anew;
    }

    /** With its weekday, which has to be the right one. */
    private static Optional<LocalDate> day(String line) {
        Matcher day = DAY.matcher(line);
        return day.matches() ? Optional.of(LocalDate.parse(day.group(1), DAYS)) : Optional.empty();
    }

    @Test
    void aDayStandsInAHeadingOrInBold() {
        LocalDate day = LocalDate.of(2026, 10, 14);

        assertThat(day("## Wednesday 14 October 2026: the first pots")).contains(day);
        assertThat(day("It is **Wednesday 14 October 2026**, and cold.")).contains(day);
        assertThat(day("It was Wednesday 14 October 2026.")).isEmpty();
    }
}
