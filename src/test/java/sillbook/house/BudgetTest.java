// SPDX-License-Identifier: Apache-2.0
package sillbook.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How long files and methods may grow: the budgets of DEVELOPERS.md. */
class BudgetTest {
    private static final List<SourceText> CODE =
            SourceText.below(Path.of("")).stream().filter(SourceText::isCode).toList();
    private static final Lengths FILES = Lengths.ofFiles(in("src/main/java/"));
    private static final Lengths METHODS = Lengths.ofMethods(in("src/main/java/"));
    private static final Lengths TEST_FILES = Lengths.ofFiles(in("src/test/java/"));
    private static final Lengths TEST_METHODS = Lengths.ofMethods(in("src/test/java/"));

    private static List<SourceText> in(String folder) {
        return CODE.stream().filter(source -> source.isIn(folder)).toList();
    }

    @Test
    void filesStayShort() {
        assertThat(FILES.longerThan(250)).as("files over 250 lines of code").isEmpty();
        assertThat(FILES.atMostAmong(0.9)).as(FILES.worst("files")).isLessThanOrEqualTo(120);
    }

    @Test
    void methodsStayShort() {
        assertThat(METHODS.longerThan(50)).as("methods over 50 lines of code").isEmpty();
        assertThat(METHODS.atMostAmong(0.9)).as(METHODS.worst("methods")).isLessThanOrEqualTo(18);
        assertThat(METHODS.atMostAmong(0.5)).as(METHODS.worst("methods")).isLessThanOrEqualTo(6);
    }

    @Test
    void testsAreMeasuredToo() {
        report("src/main/java", FILES, METHODS);
        report("src/test/java", TEST_FILES, TEST_METHODS);
        System.out.println(100 * TEST_FILES.total() / FILES.total() + " lines of test for 100 of source");
        assertThat(TEST_METHODS.all()).extracting(Lengths.Length::name).contains("BudgetTest.testsAreMeasuredToo");
    }

    private static void report(String folder, Lengths files, Lengths methods) {
        System.out.println(folder + ": " + files.total() + " lines of code; " + files.summary("files") + "; "
                + methods.summary("methods"));
    }
}
