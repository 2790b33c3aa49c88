// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.util.Map;

/**
 * Which entries are read: a condition for some tables, all rows of the others.
 *
 * @param conditions by the table's name, each beginning with a blank
 */
record Scope(Map<String, String> conditions) {
    static final Scope ALL = new Scope(Map.of());

    /** Plans that are about no pot but those. */
    private static final String WITHOUT_OTHER_POTS = " WHERE NOT EXISTS (SELECT 1 FROM proposal"
            + " WHERE proposal.season_plan = season_plan.id AND proposal.pot NOT IN temp.current_pot)";

    /** The pots listed in {@code current_pot}, and what depends on them. */
    static final Scope CURRENT = new Scope(Map.of(
            "pot", " WHERE id IN (SELECT pot FROM temp.current_pot)",
            "event", " WHERE subject_pot IS NULL OR subject_pot IN (SELECT pot FROM temp.current_pot)",
            "outcome", " WHERE pot IN (SELECT pot FROM temp.current_pot)",
            "wish", " WHERE NOT EXISTS (SELECT 1 FROM wish_pot WHERE wish = wish.id AND pot NOT IN temp.current_pot)",
            "season_plan", WITHOUT_OTHER_POTS,
            "intention",
                    " WHERE pot IN temp.current_pot AND season_plan IN (SELECT id FROM season_plan" + WITHOUT_OTHER_POTS
                            + ")"));

    String of(Table table) {
        return conditions.getOrDefault(table.name(), "");
    }
}
