// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sillbook.model.Container;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Length;
import sillbook.model.Pot;
import sillbook.model.PottingMix;
import sillbook.model.Proposal;
import sillbook.plan.Supplies.Mix;
import sillbook.reckon.fit.Filling;
import sillbook.reckon.fit.Parts;
import sillbook.season.PotFit;

/** How much potting mix the pots of a plan take beside their bulbs. */
record MixNeeded(Journal journal) {
    private static final double LITRE = 1000;

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
                .map(Length::centimetres)
                .filter(across -> across > 0)
                .map(across -> Filling.of(PotFit.inside(across, Optional.of(container)), Filling.BELOW_RIM));
    }

    /** Its diameter in cm, by its grade; 0 where that is not known, so that there is rather too much than too little. */
    private double bulb(Proposal pot) {
        return pot.purchase()
                .map(journal.purchases()::get)
                .flatMap(PotFit::bulb)
                .orElse(0.0);
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
