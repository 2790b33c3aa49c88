// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A page of the repository, line by line. */
record Page(Path file, List<String> lines) {
    private static final Path README = Path.of("README.md");
    private static final boolean WRITES = "write".equals(System.getProperty("sillbook.goldens"));

    Page {
        lines = List.copyOf(lines);
    }

    /** Every page: those at the top, those of the demo, those of {@code docs}. */
    static Stream<Page> all() {
        try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
            List<Path> files = docs.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
            Stream<Path> others = Stream.of(README, Path.of("DEVELOPERS.md"), Path.of("demo/README.md"));
            return Stream.concat(others, files.stream()).map(Page::of);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    static Page readme() {
        return of(README);
    }

    static Page of(Path file) {
        try {
            return new Page(file, Files.readAllLines(file, UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    String text() {
        return String.join("\n", lines) + "\n";
    }

    /**
     * This page, or, with {@code -Dsillbook.goldens=write}, the page with these lines instead, which is then the one on disk. Look at what
     * changed before keeping it.
     */
    Page rewritten(List<String> anew) {
        if (!WRITES || anew.equals(lines)) {
            return this;
        }
        Page page = new Page(file, anew);
        try {
            Files.writeString(file, page.text());
            return page;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Override
    public String toString() {
        return file.toString();
    }
}
