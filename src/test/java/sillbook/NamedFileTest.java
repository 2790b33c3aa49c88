// SPDX-License-Identifier: Apache-2.0
package sillbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillbook.ui.screen.Message;
import sillbook.words.list.Table;

class NamedFileTest {
    @TempDir
    private Path home;

    private Message read(String name) {
        return NamedFile.read(name, Map.of("HOME", home.toString()));
    }

    @Test
    void theTableInItIsToldUnderItsShortName() throws IOException {
        Files.writeString(home.resolve("list.csv"), "name\nInkwell\n");
        Message expected = new Message.TableRead(
                "list.csv", new Table(List.of("name"), List.of(new Table.Row(2, List.of("Inkwell")))));

        assertThat(read(home.resolve("list.csv").toString())).isEqualTo(expected);
        assertThat(read("~/list.csv")).isEqualTo(expected);
    }

    @Test
    void whatCannotBeReadIsSaid() {
        assertThat(read("~/none.csv")).isEqualTo(new Message.Failed("none.csv: There is no such file."));
        assertThat(NamedFile.read("~/none.csv", Map.of()))
                .isEqualTo(new Message.Failed("none.csv: There is no such file."));
        assertThat(read("a\0b")).isEqualTo(new Message.Failed("'a\0b' cannot be the name of a file. Name another."));
    }
}
