// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Stage;

/** Draws a pot, or the batch it is part of, as one line. */
record LineReading(
        Lines lines, Batches batches, Function<Id<Pot>, PotNow> now, Function<Id<Pot>, Optional<Job.OfPots>> job) {

    /** A line for each, in their order; the pots of a batch share that of the first. */
    List<PotLine> all(List<PotNow> pots) {
        List<PotLine> drawn = new ArrayList<>();
        Set<Id<Pot>> done = new HashSet<>();
        for (PotNow pot : pots) {
            if (!done.contains(pot.life().pot().id())) {
                PotLine line = of(pot);
                done.addAll(line.pots());
                drawn.add(line);
            }
        }
        return drawn;
    }

    private PotLine of(PotNow pot) {
        Optional<BatchShare> batch = batches.of(pot.life().pot());
        List<Id<Pot>> pots =
                batch.map(BatchShare::pots).orElse(List.of(pot.life().pot().id()));
        PotNow shown = batch.map(this::typical).orElse(pot);
        return new PotLine(
                pots, batch, lines.of(shown), job.apply(shown.life().pot().id()));
    }

    /** The first pot of a batch that stands where most of it does; on a tie where it is further on. */
    private PotNow typical(BatchShare batch) {
        Stage most = batch.counts().entrySet().stream()
                .max(Map.Entry.<Stage, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElseThrow();
        return batch.pots().stream()
                .map(now)
                .filter(pot -> pot.life().stage() == most)
                .findFirst()
                .orElseThrow();
    }
}
