// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.DateOrder;
import sillbook.model.LoggerFormat;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.words.Counts;
import sillbook.words.Temperatures;
import sillbook.words.logger.Understood.Basis;
import sillbook.words.logger.Understood.Clock;
import sillbook.words.logger.Understood.Column;
import sillbook.words.logger.Understood.Dates;
import sillbook.words.logger.Understood.Form;
import sillbook.words.logger.Understood.Found;
import sillbook.words.logger.Understood.Question;
import sillbook.words.logger.Understood.TextCode;

/** Says what a thermometer's file was understood as, a fact a line. */
public record UnderstoodWords(Understood of) {
    private static final int NAMED = 6;
    private static final double MILLI = 1000;
    private static final String BEFORE = " (as told before)";

    /** What a line is about. */
    public enum Topic {
        LAYOUT("layout"),
        INSTANT("instant"),
        CLOCK("clock"),
        READING("reading"),
        DEVICE("device"),
        SUSPICIOUS("suspicious");

        private final String word;

        Topic(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * One fact.
     *
     * @param isOpen whether the grower has to say it before anything can be kept
     */
    public record Fact(Topic topic, String says, boolean isOpen) {}

    public List<Fact> facts() {
        List<Question> open = of.questions();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(Topic.LAYOUT, layout(), false));
        facts.add(new Fact(Topic.INSTANT, instant(), open.contains(Question.DATES)));
        facts.add(new Fact(Topic.CLOCK, clock(), false));
        facts.add(new Fact(Topic.READING, reading(), open.contains(Question.COLUMN)));
        if (of.devices().size() > 1) {
            facts.add(new Fact(Topic.DEVICE, device(), open.contains(Question.DEVICE)));
        }
        return facts;
    }

    private String layout() {
        String lines = of.linesBefore() == 0 ? "" : Counts.of(of.linesBefore(), "line") + ", then ";
        String heading = of.hasHeading() ? "a heading" : "no heading";
        String between = FormatWords.SEPARATORS.say(of.separator().value()) + " between"
                + told(of.separator(), before().separator());
        String decimal = "decimal " + FormatWords.DECIMALS.say(of.decimalSign().value())
                + told(of.decimalSign(), before().decimalSign());
        return lines + heading + "; " + between + ", " + decimal + code();
    }

    private String code() {
        return of.code() == TextCode.UTF_8 ? "" : "; " + (of.code() == TextCode.UTF_16 ? "UTF-16" : "Latin-1");
    }

    private LoggerFormat before() {
        return of.toldBefore();
    }

    private static String told(Found<?> found, Optional<?> before) {
        return found.basis() == Basis.TOLD ? said(before) : "";
    }

    private static String said(Optional<?> before) {
        return before.isPresent() ? BEFORE : " (as you said)";
    }

    private String instant() {
        String where = Counts.and(of.when().columns().stream()
                .map(column -> Integer.toString(column.number()))
                .toList());
        String columns = (of.when().columns().size() == 1 ? "column " : "columns ") + where;
        return columns + ", " + (of.when().form() == Form.UNIX ? "seconds since 1970" : dates());
    }

    private String dates() {
        Dates dates = of.dates();
        return dates.order()
                .map(order -> FormatWords.inFull(order.value())
                        + told(order, before().dates())
                        + dates.proof().map(UnderstoodWords::proof).orElse(""))
                .orElseGet(() -> orders(" or ") + "?");
    }

    private static String proof(Understood.Proof proof) {
        return proof.follows()
                .map(before -> "; line " + proof.line() + " proves it: " + proof.written() + " follows " + before)
                .orElseGet(() -> "; line " + proof.line() + " proves it: " + proof.written());
    }

    private String orders(String between) {
        return String.join(
                between,
                Stream.of(DateOrder.values())
                        .filter(of.dates().possible()::contains)
                        .map(FormatWords::inFull)
                        .toList());
    }

    private String clock() {
        Clock clock = of.clock();
        String zone = FormatWords.say(clock.zone().value());
        String half = clock.isHalfDays() ? "; twelve hours, with AM and PM" : "";
        if (clock.staysBehind()) {
            return zone + " all along: it goes through the hour that summer time leaves out" + half;
        }
        if (of.when().form() == Form.UNIX) {
            return "UTC";
        }
        if (clock.rowsNameZone() && clock.zone().basis() != Basis.TOLD) {
            return "as far from Greenwich as each line says" + half;
        }
        return zone + basis(clock.zone(), before().zone(), "no zone is named, so the journal's") + half;
    }

    private static String basis(Found<?> found, Optional<?> before, String assumed) {
        return switch (found.basis()) {
            case TOLD -> said(before);
            case STATED, SEEN -> " (as the file says)";
            case ASSUMED -> " (" + assumed + ")";
        };
    }

    private String reading() {
        return of.temperature()
                .map(column -> named(column) + before(before().column()) + ", " + unit() + suspicious())
                .orElseGet(() -> "column "
                        + Counts.or(of.temperatures().stream()
                                .map(UnderstoodWords::numbered)
                                .toList()) + "?");
    }

    /** {@code column 2, "Temp, C"}. */
    private static String named(Column column) {
        return "column " + column.number() + (column.name().isEmpty() ? "" : ", \"" + column.name() + '"');
    }

    private static String numbered(Column column) {
        return column.number() + (column.name().isEmpty() ? "" : " \"" + column.name() + '"');
    }

    private String unit() {
        if (of.rowsNameUnit()) {
            return "in the unit each line names";
        }
        Found<TemperatureUnit> unit = of.unit();
        return "in " + Temperatures.unit(unit.value()) + basis(unit, before().unit(), "no unit is named");
    }

    private static String before(Optional<?> told) {
        return told.isPresent() ? BEFORE : "";
    }

    /** What can hardly be true is said of each reading; only what was told before could surprise. */
    private String suspicious() {
        List<String> told = before().suspicious().stream()
                .map(milli -> Temperatures.number(milli / MILLI, TemperatureUnit.CELSIUS) + " C")
                .toList();
        return told.isEmpty() ? "" : "; " + Counts.and(told) + " suspicious" + BEFORE;
    }

    private String device() {
        List<String> some = of.devices().stream().limit(NAMED).toList();
        String all = Counts.and(some) + (of.devices().size() > NAMED ? " .." : "");
        return of.device()
                .map(one -> one + ", of " + Counts.of(of.devices().size(), "device") + before(before().device()))
                .orElseGet(() -> all + ": which?");
    }

    /** What the file calls the thermometer, where it is one alone: {@code called LOG-2 in the file}. */
    public Optional<String> calledThere() {
        return Optional.of(of.devices())
                .filter(all -> all.size() == 1)
                .map(all -> "called " + all.get(0) + " in the file");
    }

    /** What was taken for granted, a phrase each. */
    public List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        if (of.unit().basis() == Basis.ASSUMED && !of.rowsNameUnit()) {
            assumed.add("temperatures in C");
        }
        if (of.clock().zone().basis() == Basis.ASSUMED && !of.clock().rowsNameZone()) {
            assumed.add("times in " + FormatWords.say(of.clock().zone().value()));
        }
        return assumed;
    }

    /** What the grower has to say, a sentence each; how it is said is for whoever asks. */
    public String asks(Question question) {
        return switch (question) {
            case DATES -> "Every date of it can be read as " + orders(" and as ") + ".";
            case COLUMN ->
                "Each of its columns "
                        + Counts.and(of.temperatures().stream()
                                .map(UnderstoodWords::numbered)
                                .toList())
                        + " may be the temperature.";
            case DEVICE ->
                "It has readings of " + Counts.of(of.devices().size(), "device") + ": " + Counts.and(of.devices())
                        + ".";
        };
    }

    /** The orders that are possible, as they are typed. */
    public List<String> ordersTyped() {
        return Stream.of(DateOrder.values())
                .filter(of.dates().possible()::contains)
                .map(FormatWords.DATES::say)
                .toList();
    }
}
