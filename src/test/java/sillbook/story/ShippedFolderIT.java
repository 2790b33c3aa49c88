// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The folder that the build lays: what goes to others goes with its licence. */
class ShippedFolderIT {
    private static final Path FOLDER = Path.of(
                    System.getProperty("sillbook.program", "target/sillbook/bin/sillbook"), "../..")
            .normalize();

    @Test
    void everyLibraryIsNamedWithItsLicence() throws IOException {
        String page = Files.readString(FOLDER.resolve("licences.md"));
        try (Stream<Path> jars = Files.list(FOLDER.resolve("lib"))) {
            assertThat(jars.map(jar -> jar.getFileName().toString()).filter(name -> !name.equals("sillbook.jar")))
                    .isNotEmpty()
                    .allSatisfy(name -> assertThat(page).contains("| `" + name + "` |"));
        }
    }

    @Test
    void theTextsLieBeside() {
        assertThat(FOLDER.resolve("LICENSE")).content().contains("Apache License");
        assertThat(FOLDER.resolve("licences/LGPL-3.0.txt")).content().contains("GNU LESSER GENERAL PUBLIC LICENSE");
        assertThat(FOLDER.resolve("licences/GPL-3.0.txt")).content().contains("GNU GENERAL PUBLIC LICENSE");
    }
}
