// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.model.JobKind;
import sillbook.reckon.dates.DayCount;

/** Gives each figure shown for a pot its reasons, in the order they are shown. */
record WhyReading(Foretold pot, Optional<Job.OfPots> next, YearJobs year, Figures figures) {
    private static final Set<JobKind> OF_YEAR = EnumSet.of(
            JobKind.FEED, JobKind.PUT_OUTDOORS, JobKind.TAKE_INDOORS, JobKind.START_REST, JobKind.WAKE, JobKind.REPOT);

    List<Why<?>> list() {
        List<Why<?>> whys = new ArrayList<>();
        next.map(Job.OfPots::kind).filter(OF_YEAR::contains).map(year::why).ifPresent(whys::add);
        cold(whys);
        pot.readiness().ifPresent(ready -> whys.add(mayComeIn(ready)));
        useBy().ifPresent(whys::add);
        wish().ifPresent(whys::add);
        pot.windows()
                .forEach((milestone, window) -> whys.add(new Why.StageBegins(
                        AheadReading.stage(milestone),
                        milestone,
                        pot.prospect(),
                        figures(FigureName.COLD, FigureName.COOL_ROOM, FigureName.AFTER_COLD, FigureName.IN_BLOOM),
                        window)));
        learnt(whys);
        late().ifPresent(whys::add);
        return whys;
    }

    private void cold(List<Why<?>> whys) {
        pot.coldNeed().ifPresent(need -> {
            ColdTime cold = pot.life().cold();
            whys.add(new Why.ColdSoFar(cold.stretches(), cold.count()));
            whys.add(new Why.ColdNeeded(pot.prospect().shares(), figures(FigureName.COLD), need.potted()));
            pot.prospect()
                    .coldAhead()
                    .filter(ColdAhead::isRead)
                    .map(ahead -> enough(ahead, need.potted()))
                    .ifPresent(whys::add);
        });
    }

    private Why<?> enough(ColdAhead ahead, DayCount potted) {
        return new WhyCold(ahead, potted, figures(FigureName.COLD), ahead.between(potted.typical()));
    }

    private Why<Verdict> mayComeIn(Readiness ready) {
        return new Why.MayComeIn(
                ready.coldEnoughOn(),
                PotReading.signs(pot.life(), pot.figures()),
                pot.today(),
                figures(FigureName.READY_SHOOT),
                ready.verdict());
    }

    private Optional<Why<?>> useBy() {
        return pot.useBy()
                .flatMap(day -> pot.prospect()
                        .coldAhead()
                        .flatMap(cold -> pot.coldNeed()
                                .map(need -> new Why.UseBy(cold, need.potted(), figures(FigureName.COLD), day))));
    }

    private Optional<Why<?>> wish() {
        return pot.wish()
                .flatMap(now -> now.by()
                        .flatMap(day -> pot.prospect()
                                .next()
                                .map(next -> new Why.NeededForWish(
                                        now.wish(),
                                        next,
                                        now.share(),
                                        figures(FigureName.COOL_ROOM, FigureName.AFTER_COLD),
                                        day))));
    }

    /** Of what the days to come rest on, what was learnt, whether it holds or the handbook's was asked for. */
    private void learnt(List<Why<?>> whys) {
        if (!pot.windows().isEmpty()) {
            pot.figures().varieties().stream().flatMap(this::learnt).distinct().forEach(whys::add);
        }
        new SignReading(pot).list().forEach(sign -> whys.add(WhyLearnt.of(sign.length())));
    }

    private Stream<WhyLearnt> learnt(PotFigures.OfVariety one) {
        return Stream.of(PlantSpan.TO_FIRST_FLOWER, PlantSpan.IN_BLOOM)
                .flatMap(span -> one
                        .find(span)
                        .map(WhyLearnt::of)
                        .or(() -> one.find(span.grewFrom()).flatMap(figure -> figures.setAside(one, figure)))
                        .stream());
    }

    private Optional<Why<?>> late() {
        return next.filter(job -> job.due() == Due.LATE)
                .flatMap(job -> job.deadline().map(by -> new Why.Late(by, pot.today(), job.daysLate(pot.today()))));
    }

    private List<FigureInForce> figures(FigureName... names) {
        return Stream.of(names)
                .flatMap(name -> pot.figures().varieties().stream().flatMap(one -> one.find(name).stream()))
                .distinct()
                .toList();
    }
}
