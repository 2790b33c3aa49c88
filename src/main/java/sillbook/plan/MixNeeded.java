// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sillbook.model.Container;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Length;
import sillbook.model.Pot;
import sillbook.model.PottingMix;
import sillbook.model.Proposal;
import sillbook.model.Purchase;
import sillbook.plan.Supplies.Mix;
import sillbook.reckon.fit.Bed;
import sillbook.reckon.fit.Filling;
import sillbook.reckon.fit.Frustum;
import sillbook.reckon.fit.Parts;
import sillbook.reckon.fit.PotShape;

/** How much potting mix the pots of a plan take beside their bulbs. */
record MixNeeded(Journal journal) {
    private static final double TENTHS_IN_CM = 100;
    private static final double LITRE = 1000;

    /** The first number of a grade is a circumference in cm. */
    private static final Pattern GRADE = Pattern.compile("(\\d{1,2}(?:\\.\\d)?)\\b.*");

    Optional<Mix> of(List<Proposal> toMake) {
        double litres = 0;
        int withoutSize = 0;
        for (Proposal pot : toMake) {
            OptionalDouble one = litres(pot);
            litres += one.orElse(0);
            withoutSize += one.isPresent() ? 0 : 1;
        }
        double loose = Parts.loose(litres);
        double settled = litres;
        Optional<PottingMix> mix = usual();
        return litres == 0
                ? Optional.empty()
                : Optional.of(new Mix(
                        loose,
                        mix.map(PottingMix::id),
                        mix.filter(one -> !one.parts().isEmpty())
                                .map(one -> parts(one).of(settled))
                                .orElse(List.of()),
                        withoutSize));
    }

    private static Parts parts(PottingMix mix) {
        return new Parts(mix.parts().stream().map(PottingMix.Part::parts).toList());
    }

    /** As it lies in the pot; empty where its container is not known, has no size, or is filled with water. */
    private OptionalDouble litres(Proposal pot) {
        Optional<Filling> filling =
                pot.container().map(journal.containers()::get).flatMap(MixNeeded::filling);
        return filling.map(known -> OptionalDouble.of(known.mix(pot.bulbs() * Filling.ball(bulb(pot))) / LITRE))
                .orElse(OptionalDouble.empty());
    }

    private static Optional<Filling> filling(Container container) {
        return container
                .across()
                .map(MixNeeded::centimetres)
                .filter(across -> across > 0)
                .map(across -> {
                    Frustum usual = shape(container).of(across);
                    Frustum pot = container
                            .height()
                            .map(MixNeeded::centimetres)
                            .filter(high -> high > 0)
                            .map(high -> new Frustum(across, PotShape.BASE * across, high))
                            .orElse(usual);
                    return Filling.of(pot, Filling.BELOW_RIM);
                });
    }

    private static PotShape shape(Container container) {
        return switch (container.shape()) {
            case STANDARD, GLASS, OUTER, OTHER -> PotShape.STANDARD;
            case AZALEA -> PotShape.AZALEA;
            case PAN, BOWL -> PotShape.PAN;
        };
    }

    /** Its diameter in cm, by its grade; 0 where that is not known, so that there is rather too much than too little. */
    private double bulb(Proposal pot) {
        Optional<Purchase.Grade> grade =
                pot.purchase().map(id -> journal.purchases().get(id).grade());
        return grade.flatMap(Purchase.Grade::across)
                .map(MixNeeded::centimetres)
                .or(() -> grade.flatMap(known -> ofGrade(known.printed())))
                .orElse(0.0);
    }

    private static Optional<Double> ofGrade(String printed) {
        Matcher matcher = GRADE.matcher(printed);
        return matcher.matches() ? Optional.of(Bed.ofGrade(Double.parseDouble(matcher.group(1)))) : Optional.empty();
    }

    private static double centimetres(Length length) {
        return length.tenths() / TENTHS_IN_CM;
    }

    /** That of the last pot that was filled with one. */
    private Optional<PottingMix> usual() {
        Optional<Id<PottingMix>> last = journal.pots().all().stream()
                .filter(pot -> pot.pottingMix().isPresent())
                .max(Comparator.comparing(Pot::season).thenComparing(Pot::label))
                .flatMap(Pot::pottingMix);
        return last.map(journal.pottingMixes()::get);
    }
}
