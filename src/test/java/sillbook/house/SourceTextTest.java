// SPDX-License-Identifier: Apache-2.0
package sillbook.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What every file of the repository carries, and what none holds; each rule beside a text that breaks it. */
class SourceTextTest {
    private static final String LICENCE = "SPDX-License-Identifier: Apache-2.0";

    /** The kinds of file whose format has comments. */
    private static final Pattern COMMENTED = Pattern.compile(".*\\.(java|sql|tsv|sh|xml|properties|ya?ml)");

    /** Folders that exist on one machine only, and what lies beside a work tree. */
    private static final Pattern MACHINE = Pattern.compile("(?<![\\w.}])/(work|root)/|\\.\\./shared");

    private static final Pattern REGISTRY = Pattern.compile(
            "\\b(repo\\d?|registry|central|search|deb|packages|mirrors?)\\.[\\w.-]+\\.(org|com|net|io|dev)\\b");

    /** Where a link in a page leads, if it stays inside the repository. */
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:\\s]+)(#[^)]*)?\\)");

    static Stream<Arguments> rules() {
        return Stream.of(
                rule("a licence line", SourceTextTest::lacksItsLicence, "a.sql", "CREATE TABLE pot (id) STRICT;"),
                rule("a licence line in scripts", SourceTextTest::lacksItsLicence, "a", "#!/bin/sh\nexit 0\n"),
                rule("no machine's folders", holds(MACHINE), "a.md", "see `/" + "work/notes`"),
                rule("no folders beside the tree", holds(MACHINE), "a.md", "see .." + "/shared/notes"),
                rule("no registry", holds(REGISTRY), "a.xml", "<url>https://repo" + ".example.org/maven</url>"),
                rule("no dead link", SourceTextTest::hasADeadLink, "docs/a.md", "see [the page](nowhere.md)"),
                rule("a purpose", SourceTextTest::saysNoPurpose, "package-info.java", "\n@NullMarked\npackage x;"),
                rule("null marks", SourceTextTest::saysNoPurpose, "package-info.java", "\n/** Bulbs. */\npackage x;"));
    }

    private static Arguments rule(String says, Predicate<SourceText> isBroken, String name, String offender) {
        return arguments(Named.of(says, isBroken), new SourceText(name, offender));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void everyFileHas(Predicate<SourceText> isBroken, SourceText offender) {
        assertThat(SourceText.below(Path.of("")))
                .filteredOn(isBroken)
                .extracting(SourceText::name)
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theRuleFindsItsOffender(Predicate<SourceText> isBroken, SourceText offender) {
        assertThat(isBroken).accepts(offender);
    }

    @Test
    void everyPackageHasAPackageInfo() {
        List<SourceText> sources = SourceText.below(Path.of("src/main/java"));
        assertThat(sources).extracting(SourceText::folder).contains("sillbook");
        assertThat(sources.stream().map(SourceText::folder).distinct())
                .allMatch(folder -> Files.exists(Path.of("src/main/java", folder, "package-info.java")));
    }

    @Test
    void bytesAndBuiltFilesAreLeftOut(@TempDir Path top) throws IOException {
        Files.createDirectories(top.resolve("target"));
        Files.writeString(top.resolve("target/built.txt"), "built");
        Files.write(top.resolve("picture.png"), new byte[] {1, 0, 2});
        Files.writeString(top.resolve("kept.txt"), "kept");
        assertThat(SourceText.below(top)).containsExactly(new SourceText("kept.txt", "kept"));
    }

    private static boolean lacksItsLicence(SourceText source) {
        boolean hasComments =
                COMMENTED.matcher(source.name()).matches() || source.text().startsWith("#!");
        return hasComments && source.text().lines().limit(3).noneMatch(line -> line.contains(LICENCE));
    }

    private static Predicate<SourceText> holds(Pattern pattern) {
        return source -> pattern.matcher(source.text()).find();
    }

    private static boolean hasADeadLink(SourceText source) {
        return source.name().endsWith(".md")
                && LINK.matcher(source.text())
                        .results()
                        .anyMatch(link -> Files.notExists(Path.of(source.folder(), link.group(1))));
    }

    private static boolean saysNoPurpose(SourceText source) {
        return source.name().endsWith("package-info.java")
                && !(source.text().contains("\n/**") && source.text().contains("\n@NullMarked\n"));
    }
}
