// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CrashReportTest {
    @TempDir
    private Path folder;

    private static Throwable fault() {
        IllegalStateException inner = new IllegalStateException("T4 'Marrow Lane'");
        RuntimeException outer = new RuntimeException("while drawing T4", inner);
        inner.addSuppressed(outer);
        return outer;
    }

    @Test
    void itTellsWhereButQuotesNothing() throws IOException {
        Path report = CrashReport.write(folder.resolve("state"), fault()).orElseThrow();

        assertThat(Files.readString(report))
                .contains("java.lang.RuntimeException", "java.lang.IllegalStateException", "CrashReportTest.fault")
                .doesNotContain("T4");
    }

    @Test
    void whereItCannotBeWrittenTheSentenceSaysWhatItWas() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        Optional<Path> report = CrashReport.write(file, fault());

        assertThat(report).isEmpty();
        assertThat(new Shell.Ending.Crashed(fault(), report).sentence()).contains("java.lang.RuntimeException");
    }

    @Test
    void causesInACircleEnd() {
        RuntimeException one = new RuntimeException();
        RuntimeException other = new RuntimeException(one);
        one.initCause(other);

        assertThat(CrashReport.lines(one))
                .filteredOn("java.lang.RuntimeException"::equals)
                .hasSize(2);
    }
}
