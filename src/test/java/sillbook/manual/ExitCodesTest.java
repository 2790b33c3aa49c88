// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.cli.ExitCode;

/** The table of exit codes: each is what its example ends with, and there is no other. */
class ExitCodesTest {
    private static final Page PAGE = Page.of(Path.of("docs/reference/commands.md"));

    @TempDir
    private Path home;

    static Stream<List<String>> rows() {
        return Blocks.table(PAGE, "exit codes: tried by a test").stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theExampleEndsWithIt(List<String> row) {
        Shell shell = new Shell(home);
        shell.layDemo();

        shell.type(row.get(2).replace("`", ""));

        assertThat(shell.code()).isEqualTo(Integer.parseInt(row.get(0)));
    }

    @Test
    void everyCodeOfTheProgramHasARow() {
        Set<Integer> known =
                Stream.of(ExitCode.class.getFields()).map(ExitCodesTest::value).collect(toSet());

        assertThat(rows().map(row -> Integer.parseInt(row.get(0))))
                .hasSize(3)
                .containsExactlyInAnyOrderElementsOf(known);
    }

    private static Integer value(Field code) {
        try {
            return code.getInt(null);
        } catch (IllegalAccessException impossible) {
            throw new AssertionError(impossible);
        }
    }
}
