// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Journal;
import sillbook.model.PottingMix;
import sillbook.plan.Supplies;
import sillbook.words.Counts;
import sillbook.words.Inside;

/** What a plan takes and what is to be had, as it is said. */
public record SuppliesWords(Journal journal) {
    /**
     * {@code 57 bulbs of 4 sorts, 3 x pan 15 cm, 14 labels, 11 L of sill potting mix: 5.5 L loam, 3.5 L leaf mould, 2 L sand}; what is in hand
     * already is not in it but the labels and the mix.
     */
    public String toBuy(Supplies supplies) {
        List<String> facts = new ArrayList<>();
        bulbs(supplies).ifPresent(facts::add);
        supplies.containers().stream()
                .filter(pots -> pots.toBuy() > 0)
                .forEach(pots -> facts.add(pots.toBuy() + " x "
                        + journal.containers().get(pots.container()).name()));
        if (supplies.labels() > 0) {
            facts.add(Counts.of(supplies.labels(), "label"));
        }
        supplies.mix().map(this::mix).ifPresent(facts::add);
        return facts.isEmpty() ? "nothing" : String.join(", ", facts);
    }

    private static Optional<String> bulbs(Supplies supplies) {
        long sorts = supplies.bulbs().stream()
                .filter(bulbs -> bulbs.wanting() > 0)
                .map(Supplies.Bulbs::variety)
                .distinct()
                .count();
        return sorts == 0
                ? Optional.empty()
                : Optional.of(Counts.of(supplies.wanting(), "bulb") + " of " + Counts.of(sorts, "sort"));
    }

    /** {@code 4.9 L of sill mix: 2.5 L loam, 2.4 L sand}. */
    public String mix(Supplies.Mix mix) {
        return mix.mix()
                .map(id -> journal.pottingMixes().get(id))
                .map(known -> Inside.litresAbout(mix.litres()) + " of " + known.name() + parts(known, mix.parts()))
                .orElseGet(() -> Inside.litresAbout(mix.litres()) + " of potting mix");
    }

    private static String parts(PottingMix mix, List<Double> litres) {
        List<String> said = new ArrayList<>();
        for (int part = 0; part < litres.size(); part++) {
            said.add(Inside.litresAbout(litres.get(part)) + " "
                    + mix.parts().get(part).material());
        }
        return said.isEmpty() ? "" : ": " + String.join(", ", said);
    }
}
