// SPDX-License-Identifier: Apache-2.0
package sillbook.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * One text file of the repository.
 *
 * @param name its path from the top, with forward slashes
 */
record SourceText(String name, String text) {
    private static final Set<String> NOT_OURS = Set.of("target", ".git", ".idea", ".vscode", ".settings");

    /** Literals, which may look like comments, and comments. */
    private static final Pattern LITERAL_OR_COMMENT =
            Pattern.compile("(\"\"\"(?s:.*?)(?<!\\\\)\"\"\"|\"(?:\\\\.|[^\"\\\\\n])*+\"|'(?:\\\\.|[^'\\\\])+?')"
                    + "|//[^\n]*|/\\*(?s:.*?)\\*/");

    /** Every text file below the folder that a commit could hold; pictures and other bytes are left out. */
    static List<SourceText> below(Path top) {
        List<Path> files = new ArrayList<>();
        try {
            Files.walkFileTree(top, collectingInto(files));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files.stream()
                .sorted()
                .map(file -> read(top, file))
                .filter(source -> source.text().indexOf('\0') < 0)
                .toList();
    }

    private static SimpleFileVisitor<Path> collectingInto(List<Path> files) {
        return new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                return NOT_OURS.contains(String.valueOf(folder.getFileName()))
                        ? FileVisitResult.SKIP_SUBTREE
                        : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (!NOT_OURS.contains(String.valueOf(file.getFileName()))) {
                    files.add(file);
                }
                return FileVisitResult.CONTINUE;
            }
        };
    }

    private static SourceText read(Path top, Path file) {
        try {
            String name = top.relativize(file).toString().replace('\\', '/');
            return new SourceText(name, new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The folder that it lies in, or nothing for one at the top. */
    String folder() {
        return name.substring(0, Math.max(0, name.lastIndexOf('/')));
    }

    boolean isIn(String folder) {
        return name.startsWith(folder);
    }

    boolean isCode() {
        return name.endsWith(".java") && !name.endsWith("package-info.java");
    }

    /** How many lines of this Java source hold code. */
    int codeLines() {
        return countCode(codeOf(text));
    }

    /** The lines of a Java source as they stand, comments blanked out. */
    static List<String> codeOf(String java) {
        return LITERAL_OR_COMMENT
                .matcher(java)
                .replaceAll(match -> match.group(1) == null ? "\n".repeat(lineBreaks(match.group())) : "$0")
                .lines()
                .toList();
    }

    static int countCode(List<String> lines) {
        return (int) lines.stream().filter(line -> !line.isBlank()).count();
    }

    private static int lineBreaks(String text) {
        return (int) text.chars().filter(character -> character == '\n').count();
    }
}
