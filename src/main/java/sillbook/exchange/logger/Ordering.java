// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static java.util.stream.Collectors.toCollection;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.DateOrder;
import sillbook.words.logger.Understood.Basis;
import sillbook.words.logger.Understood.Dates;
import sillbook.words.logger.Understood.Found;
import sillbook.words.logger.Understood.Proof;

/** Judges in which order a file's dates stand. What more than one order allows is left open, however likely one of them may be. */
final class Ordering {
    /** Where no order suits every line, some lines are torn: at most one in so many. */
    private static final long LINES_TO_ONE_TORN = 50;

    private Ordering() {}

    static Dates of(Survey survey, Optional<DateOrder> told) {
        if (!survey.isDoubtful()) {
            return new Dates(
                    Optional.of(new Found<>(DateOrder.YEAR_MONTH_DAY, Basis.STATED)),
                    Optional.empty(),
                    EnumSet.of(DateOrder.YEAR_MONTH_DAY));
        }
        if (told.isPresent()) {
            return new Dates(
                    told.map(order -> new Found<>(order, Basis.TOLD)), Optional.empty(), EnumSet.of(told.get()));
        }
        List<Evidence> whole = unbroken(survey);
        List<Evidence> left = steady(whole);
        if (left.size() != 1) {
            return new Dates(Optional.empty(), Optional.empty(), orders(left.isEmpty() ? survey.evidence() : left));
        }
        Evidence only = left.get(0);
        Optional<Proof> proof = whole.size() > 1 ? only.close() : lastBroken(survey, only);
        return new Dates(Optional.of(new Found<>(only.order(), Basis.SEEN)), proof, orders(left));
    }

    /** The line that is no date in the order that was told, where more are none in it than can be torn, and another order suits. */
    static Optional<Proof> against(Survey survey, DateOrder told) {
        long torn = survey.doubtful() / LINES_TO_ONE_TORN;
        boolean suitsAnother = survey.evidence().stream().anyMatch(order -> order.broken() <= torn);
        return survey.evidence().stream()
                .filter(order -> order.order() == told && order.broken() > torn && suitsAnother)
                .flatMap(order -> order.firstBroken().stream())
                .findFirst();
    }

    private static List<Evidence> unbroken(Survey survey) {
        long fewest =
                survey.evidence().stream().mapToLong(Evidence::broken).min().orElse(0);
        long allowed = fewest == 0 ? 0 : survey.doubtful() / LINES_TO_ONE_TORN;
        return survey.evidence().stream()
                .filter(order -> order.broken() <= allowed)
                .toList();
    }

    /**
     * Without an order in which every next date is months or years away, where in another it is close: then the year stands at the other end.
     * Between day and month nothing is made of that.
     */
    private static List<Evidence> steady(List<Evidence> orders) {
        boolean yearFirst = orders.stream().anyMatch(order -> isYearFirst(order) && order.isSteady());
        boolean yearLast = orders.stream().anyMatch(order -> !isYearFirst(order) && order.isSteady());
        boolean neverYearFirst = orders.stream().filter(Ordering::isYearFirst).allMatch(Evidence::isErratic);
        boolean neverYearLast =
                orders.stream().filter(order -> !isYearFirst(order)).allMatch(Evidence::isErratic);
        return orders.stream()
                .filter(order -> isYearFirst(order) ? !(yearLast && neverYearFirst) : !(yearFirst && neverYearLast))
                .toList();
    }

    private static boolean isYearFirst(Evidence evidence) {
        return evidence.order() == DateOrder.YEAR_MONTH_DAY;
    }

    private static Set<DateOrder> orders(List<Evidence> evidence) {
        return evidence.stream().map(Evidence::order).collect(toCollection(() -> EnumSet.noneOf(DateOrder.class)));
    }

    /** The line by which the last of the other orders fell. */
    private static Optional<Proof> lastBroken(Survey survey, Evidence only) {
        return survey.evidence().stream()
                .filter(order -> order != only)
                .flatMap(order -> order.firstBroken().stream())
                .max(Comparator.comparingInt(Proof::line))
                .map(proof -> new Proof(proof.line(), proof.written(), Optional.empty()));
    }
}
