// SPDX-License-Identifier: Apache-2.0
package sillbook.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.conditions.ArchConditions.accessTargetWhere;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Names and calls that are not used here, or in one place only; each rule beside what it finds among the offenders. */
class HouseRulesTest {
    private static final String[] MAIN_AND_APP = {"sillbook", "..app.."};
    private static final String[] EDGES = {"sillbook", "..cli..", "..ui.terminal.."};

    static Stream<Arguments> rules() {
        return Stream.of(
                rule("a record's parts are asked for by their plain names", recordsHaveNoGetters(), "getWeeks"),
                rule("a class's name says what it is", namesSayWhatAThingIs(), "PotManager", "BulbUtils$Weigher"),
                rule(
                        "only the application asks the time",
                        onlyTheApplicationAsksTheTime(),
                        "Instant.now()",
                        "LocalDate.now(java.time.ZoneId)",
                        "ZoneId.systemDefault()",
                        "Clock.systemUTC()",
                        "System.currentTimeMillis()"),
                rule(
                        "only the edges hold the standard streams",
                        onlyTheEdgesHoldTheStreams(),
                        "System.out",
                        "System.err",
                        "System.in",
                        "System.console()",
                        "FileDescriptor.out",
                        "printStackTrace()"),
                rule(
                        "nothing leans on the machine's language",
                        nothingLeansOnTheLanguage(),
                        "String.toLowerCase()",
                        "String.toUpperCase()",
                        "String.format(",
                        "String.formatted(",
                        "Formatter.<init>()",
                        "NumberFormat.getInstance()",
                        "DecimalFormat.<init>(",
                        "DateTimeFormatter.ofPattern(",
                        "DateTimeFormatterBuilder.toFormatter()",
                        "Locale.getDefault()"),
                rule(
                        "screens measure text by its width",
                        screensMeasureTextByWidth(),
                        "String.length()",
                        "String.substring(",
                        "String.charAt(",
                        "CharSequence.length()",
                        "CharSequence.subSequence("));
    }

    private static Arguments rule(String says, ArchRule rule, String... offences) {
        return arguments(Named.of(says, rule.as(says).allowEmptyShould(true)), List.of(offences));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void isKept(ArchRule rule, List<String> offences) {
        rule.check(Classes.SHIPPED);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void findsItsOffences(ArchRule rule, List<String> offences) {
        assertThat(rule.evaluate(Classes.OFFENDERS).getFailureReport().getDetails())
                .as("what breaks the rule among the offenders")
                .satisfies(found -> assertThat(offences)
                        .allSatisfy(offence -> assertThat(found).anyMatch(it -> it.contains(offence))));
    }

    private static ArchRule recordsHaveNoGetters() {
        return methods()
                .that()
                .areDeclaredInClassesThat()
                .areAssignableTo(Record.class)
                .should()
                .haveNameNotMatching("get[A-Z].*");
    }

    private static ArchRule namesSayWhatAThingIs() {
        return noClasses().should().haveNameMatching(".*(Manager|Helper|Utils?|Impl|D[Tt][Oo])(\\$.*)?");
    }

    private static ArchRule onlyTheApplicationAsksTheTime() {
        return noClasses()
                .that()
                .resideOutsideOfPackages(MAIN_AND_APP)
                .should(use("java.time.*.now(*", "java.time.Clock.*", "java.time.ZoneId.systemDefault()"))
                .orShould(use("java.lang.System.currentTimeMillis()", "java.util.Date.<init>()"));
    }

    private static ArchRule onlyTheEdgesHoldTheStreams() {
        return noClasses()
                .that()
                .resideOutsideOfPackages(EDGES)
                .should(use("java.lang.System.in", "java.lang.System.out", "java.lang.System.err"))
                .orShould(use("java.lang.System.console()", "java.io.FileDescriptor.*", "*.printStackTrace()"));
    }

    private static ArchRule nothingLeansOnTheLanguage() {
        return noClasses()
                .should(use("java.lang.String.toLowerCase()", "java.lang.String.toUpperCase()"))
                .orShould(use("*.format(java.lang.String, [Ljava.lang.Object;)", "*.formatted([Ljava.lang.Object;)"))
                .orShould(use("*.printf(java.lang.String, [Ljava.lang.Object;)", "java.util.Formatter.<init>()"))
                .orShould(use("java.time.format.*.ofPattern(java.lang.String)", "java.time.format.*.toFormatter()"))
                .orShould(use("java.text.*.get*Instance()", "java.text.DecimalFormat.<init>(java.lang.String)"))
                .orShould(use("java.util.Locale.getDefault(*"));
    }

    private static ArchRule screensMeasureTextByWidth() {
        return noClasses()
                .that()
                .resideInAPackage("..ui..")
                .and()
                .resideOutsideOfPackage("..ui.terminal..")
                .should(use("java.lang.String.length()", "java.lang.String.substring(*", "java.lang.String.charAt(*"))
                .orShould(use("java.lang.CharSequence.length()", "java.lang.CharSequence.subSequence(*"));
    }

    /**
     * Uses a field, or calls or passes on a method.
     *
     * @param targets full names with the types of the parameters, {@code *} standing for anything
     */
    private static ArchCondition<JavaClass> use(String... targets) {
        Pattern any = Pattern.compile(Stream.of(targets)
                .map(target -> "\\Q" + target.replace("*", "\\E.*\\Q") + "\\E")
                .collect(joining("|")));
        return accessTargetWhere(describe(
                "is one of " + List.of(targets),
                (JavaAccess<?> access) ->
                        any.matcher(access.getTarget().getFullName()).matches()));
    }
}
