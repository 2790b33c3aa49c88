// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.time.DayOfWeek;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Proposal;
import sillbook.model.Proposal.Course;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.SeasonPlan.Search;

/** The plans of seasons, with the pots they propose. */
final class SeasonPlanRows implements Mapping<SeasonPlan> {
    private static final Table TABLE = Table.of(
            "season_plan",
            "id",
            "season",
            "name",
            "at_once",
            "every_days",
            "rule_from",
            "rule_to",
            "potted_a_day",
            "potting_days",
            "least_unmet",
            "least_gap",
            "least_pots",
            "adopted",
            "note");
    private static final Parts<SeasonPlan, Proposal> PARTS = new Parts<>(
            Table.of(
                    "proposal",
                    "season_plan",
                    "position",
                    "variety",
                    "bulbs",
                    "purchase",
                    "container",
                    "pot",
                    "potting",
                    "cold",
                    "brought_in",
                    "room"),
            SeasonPlan::pots,
            SeasonPlanRows::write,
            SeasonPlanRows::proposal);

    @Override
    public Class<SeasonPlan> type() {
        return SeasonPlan.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public Optional<Parts<SeasonPlan, ?>> parts() {
        return Optional.of(PARTS);
    }

    @Override
    public void write(SeasonPlan plan, Values row) {
        Rule rule = plan.rule();
        row.id(plan.id())
                .season(plan.season())
                .text(plan.name())
                .number(rule.pots())
                .number(rule.everyDays())
                .date(rule.from())
                .date(rule.to())
                .number(rule.pottedADay())
                .words(rule.pottingDays())
                .optionalNumber(plan.search().map(Search::unmet))
                .optionalNumber(plan.search().map(Search::gapDays))
                .optionalNumber(plan.search().map(Search::pots))
                .optionalDate(plan.adopted())
                .text(plan.note());
    }

    @Override
    public SeasonPlan read(Row row) throws SQLException {
        Id<SeasonPlan> id = row.id();
        return new SeasonPlan(
                id,
                row.season(),
                row.text(),
                new Rule(row.number(), row.number(), row.date(), row.date(), row.number(), row.words(DayOfWeek.class)),
                row.parts(id),
                search(row.optionalNumber(), row.optionalNumber(), row.optionalNumber()),
                row.optionalDate(),
                row.text());
    }

    private static Optional<Search> search(Optional<Integer> unmet, Optional<Integer> gap, Optional<Integer> pots) {
        return unmet.flatMap(lacking -> gap.flatMap(days -> pots.map(used -> new Search(lacking, days, used))));
    }

    private static void write(Proposal proposal, Values row) {
        row.id(proposal.variety())
                .number(proposal.bulbs())
                .optionalId(proposal.purchase())
                .optionalId(proposal.container())
                .optionalId(proposal.pot());
        write(proposal.course(), row);
    }

    private static Proposal proposal(Row row) throws SQLException {
        return new Proposal(row.id(), row.number(), row.optionalId(), row.optionalId(), row.optionalId(), course(row));
    }

    /** Four columns. */
    static void write(Course course, Values row) {
        row.date(course.potting()).optionalId(course.cold()).date(course.in()).optionalId(course.room());
    }

    /** The same. */
    static Course course(Row row) throws SQLException {
        return new Course(row.date(), row.optionalId(), row.date(), row.optionalId());
    }
}
