// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The page on lines lists every form as the program itself does. */
class LinesPageTest {
    private static final Path PAGE = Path.of("docs/reference/lines.md");

    @Test
    void thePageListsEveryForm() throws IOException {
        assertThat(Files.readString(PAGE)).endsWith(forms());
    }

    static String forms() {
        return QuickLine.forms().stream().map(LinesPageTest::section).collect(Collectors.joining("\n"));
    }

    private static String section(FormHelp form) {
        String examples = String.join("\n", form.examples());
        return "### " + form.name() + "\n\n" + form.says() + "\n\n```\n" + examples + "\n```\n";
    }
}
