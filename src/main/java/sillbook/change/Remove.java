// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.Optional;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Settings;

/** An entry other than a pot goes, when nothing in the journal still refers to it. */
public record Remove(Entity<?> entity) implements Change {
    @Override
    public Decision on(Journal journal, Hand hand) {
        if (entity instanceof Pot || entity instanceof Settings) {
            throw new IllegalArgumentException("pots have a change of their own, and settings stay: " + entity);
        }
        String name = Said.entity(journal, entity);
        Optional<String> user = References.to(journal, entity);
        if (user.isPresent()) {
            return new Refusal("The " + name + " is still used by " + user.get() + ". Nothing was removed.");
        }
        return new Step(name + " removed", List.of(new Edit.Remove(entity)));
    }
}
