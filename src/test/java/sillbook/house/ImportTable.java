// SPDX-License-Identifier: Apache-2.0
package sillbook.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static java.util.stream.Collectors.toCollection;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The import table of DEVELOPERS.md as rules over the classes under one root package.
 *
 * @param root the package that the table's names are relative to
 */
record ImportTable(String root, List<Row> rows) {
    /** The row of the root package itself. */
    static final String MAIN = "Main";

    private static final Path PAGE = Path.of("DEVELOPERS.md");
    private static final String MARK = "<!-- the import table";
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");
    private static final Set<String> UNSAID = Set.of("java.lang", "org.jspecify.annotations");

    /** What {@code java.*} stands for: java.base without its network. */
    private static final Set<String> QUIET_JAVA = Set.of(
            "java.io", "java.lang", "java.math", "java.nio", "java.security", "java.text", "java.time", "java.util");

    /**
     * One package with those below it that have no row of their own.
     *
     * @param imports the names of the other rows that it may use
     * @param outside the packages from outside that it may use, with all below them
     */
    record Row(String name, Set<String> imports, Set<String> outside) {
        private static Row parse(String line, Set<String> above) {
            String[] cells = line.split("\\|", -1);
            String name = quoted(cells[1]).iterator().next();
            return new Row(name, imports(cells[3].strip(), above), quoted(cells[4]));
        }

        private static Set<String> imports(String cell, Set<String> above) {
            Set<String> named = quoted(cell);
            if (!cell.startsWith("all above")) {
                return named;
            }
            Set<String> all = new LinkedHashSet<>(above);
            all.removeAll(named);
            return all;
        }

        private boolean covers(String relativePackage) {
            return relativePackage.equals(name) || relativePackage.startsWith(name + ".");
        }

        private boolean mayUseFromOutside(String packageName) {
            return Stream.of(UNSAID, outside)
                    .flatMap(Set::stream)
                    .flatMap(named -> named.equals("java.*") ? QUIET_JAVA.stream() : Stream.of(named))
                    .anyMatch(named -> packageName.equals(named) || packageName.startsWith(named + "."));
        }
    }

    static ImportTable over(String root) throws IOException {
        List<Row> rows = new ArrayList<>();
        Set<String> above = new LinkedHashSet<>();
        for (String line : tableLines()) {
            Row row = Row.parse(line, above);
            rows.add(row);
            above.add(row.name());
        }
        return new ImportTable(root, List.copyOf(rows));
    }

    private static List<String> tableLines() throws IOException {
        return Files.readAllLines(PAGE).stream()
                .dropWhile(line -> !line.startsWith(MARK))
                .dropWhile(line -> !line.startsWith("|"))
                .takeWhile(line -> line.startsWith("|"))
                .skip(2)
                .toList();
    }

    private static Set<String> quoted(String cell) {
        return QUOTED.matcher(cell).results().map(match -> match.group(1)).collect(toCollection(LinkedHashSet::new));
    }

    /** The row that a class stands in: the longest name that its package begins with. */
    Optional<Row> rowOf(JavaClass type) {
        String packageName = type.getPackageName();
        if (packageName.equals(root)) {
            return rows.stream().filter(row -> row.name().equals(MAIN)).findFirst();
        }
        if (!packageName.startsWith(root + ".")) {
            return Optional.empty();
        }
        String relative = packageName.substring(root.length() + 1);
        return rows.stream()
                .filter(row -> row.covers(relative))
                .max(Comparator.comparingInt(row -> row.name().length()));
    }

    ArchRule everyClassStandsInARow() {
        DescribedPredicate<JavaClass> inARow =
                describe("in a package of the import table", type -> rowOf(type).isPresent());
        return classes().that().doNotHaveSimpleName("package-info").should(be(inARow));
    }

    ArchRule importsOf(Row row) {
        return classes()
                .that(describe("stand in " + row.name(), type -> rowOf(type).equals(Optional.of(row))))
                .should()
                .onlyDependOnClassesThat(usableFrom(row))
                .allowEmptyShould(true);
    }

    private DescribedPredicate<JavaClass> usableFrom(Row row) {
        return describe(
                "its row of the import table allows: " + row.imports() + " and " + row.outside(),
                type -> isUsable(row, type.getBaseComponentType()));
    }

    private boolean isUsable(Row row, JavaClass type) {
        return type.isPrimitive()
                || row.mayUseFromOutside(type.getPackageName())
                || rowOf(type)
                        .filter(used -> used.equals(row) || row.imports().contains(used.name()))
                        .isPresent();
    }
}
