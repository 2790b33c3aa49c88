// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Pot;

/** Splits a batch into the parts in which its pots stand alike; those that are gone stand last. */
final class BatchParts {
    private BatchParts() {}

    /** The parts in the order of their stages, then of their first labels. */
    static List<BatchPart> of(Stream<PotLife> pots) {
        Map<BatchPart, List<Id<Pot>>> alike = new LinkedHashMap<>();
        pots.sorted(ByLabel.OF_LIVES)
                .forEach(life -> alike.computeIfAbsent(part(life), none -> new ArrayList<>())
                        .add(life.pot().id()));
        return alike.entrySet().stream()
                .map(part -> new BatchPart(
                        part.getKey().stage(),
                        part.getKey().place(),
                        part.getKey().end(),
                        part.getValue()))
                .sorted((one, other) -> one.stage().compareTo(other.stage()))
                .toList();
    }

    /** What it is part of, without any pots. */
    private static BatchPart part(PotLife life) {
        Optional<End> end = life.standing() instanceof Standing.Done done ? Optional.of(done.end()) : Optional.empty();
        return new BatchPart(life.stage(), life.stands().map(Stay::place), end, List.of());
    }
}
