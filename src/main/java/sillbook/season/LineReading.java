// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Stage;

/** Draws a pot, or the batch it is part of, as one line. */
record LineReading(
        Lines lines, Batches batches, Function<Id<Pot>, PotNow> now, Function<Id<Pot>, Optional<Job.OfPots>> job) {

    PotLine of(PotNow pot) {
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
