// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillbook.cli.Version;

/** The folder that the build lays: what goes to others goes with its licence. */
class ShippedFolderIT {
    private static final Path FOLDER = Path.of(
                    System.getProperty("sillbook.program", "target/sillbook/bin/sillbook"), "../..")
            .normalize();

    @Test
    void everyLibraryIsNamedWithItsLicence() throws IOException {
        String page = Files.readString(FOLDER.resolve("licences.md"));
        try (Stream<Path> jars = Files.list(FOLDER.resolve("lib"))) {
            assertThat(jars.map(jar -> jar.getFileName().toString())
                            .filter(name -> name.endsWith(".jar") && !name.equals("sillbook.jar")))
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

    /** Looked at through the Java the tests run under, which is the one that packaged. */
    @Test
    void theProgramsClassesComeFromTheArchive() throws IOException, InterruptedException {
        Process java = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:SharedArchiveFile="
                                + FOLDER.resolve("lib/sillbook.jsa").toAbsolutePath(),
                        "-Xlog:class+load",
                        "-jar",
                        FOLDER.resolve("lib/sillbook.jar").toAbsolutePath().toString(),
                        "--version")
                .redirectErrorStream(true)
                .start();
        String loaded = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(java.waitFor()).isZero();
        assertThat(loaded).contains("sillbook.cli.Commands source: shared objects file");
    }

    /** As when the folder was carried elsewhere, or Java is another by now. */
    @Test
    void anArchiveThatDoesNotFitIsLeftAlone(@TempDir Path elsewhere) throws IOException, InterruptedException {
        Path moved = elsewhere.resolve("sillbook");
        copy(FOLDER, moved);
        Files.writeString(moved.resolve("lib/sillbook.jsa"), "no archive");
        Process program = new ProcessBuilder(moved.resolve("bin/sillbook").toString(), "--version")
                .redirectErrorStream(true)
                .start();
        String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(program.waitFor()).isZero();
        assertThat(said).isEqualTo(Version.LINE + "\n");
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path one : (Iterable<Path>) all::iterator) {
                Files.copy(one, to.resolve(from.relativize(one).toString()), StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
        to.resolve("lib/sillbook.jsa").toFile().setWritable(true);
    }
}
