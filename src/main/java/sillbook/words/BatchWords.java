// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import sillbook.model.Journal;
import sillbook.season.BatchPart;

/** How the pots of a batch stand. */
public record BatchWords(Journal journal) {

    /** Each part on its own: {@code T1-T22: cold, cellar}, {@code T23-T24: sold}. */
    public List<String> parts(List<BatchPart> parts) {
        return parts.stream().map(this::part).toList();
    }

    private String part(BatchPart part) {
        PotNames names = new PotNames(journal);
        String stands = part.end().map(Terms.ENDS::say).orElseGet(() -> Terms.STAGES.say(part.stage()));
        return names.labels(part.pots()) + ": " + stands
                + part.place().map(place -> ", " + names.place(place)).orElse("");
    }
}
