// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.SeasonPlan.Rule;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.Key;

/**
 * The fields of a hand rule while they are typed in.
 *
 * @param at the field that keys go to
 */
record RuleTyped(List<Field> fields, int at) {
    RuleTyped {
        fields = List.copyOf(fields);
    }

    static RuleTyped of(Rule rule) {
        return new RuleTyped(RuleTexts.of(rule).stream().map(Field::of).toList(), 0);
    }

    /** On another field; around from the last to the first. */
    RuleTyped step(int by) {
        return new RuleTyped(fields, Math.floorMod(at + by, fields.size()));
    }

    List<String> texts() {
        return fields.stream().map(Field::text).toList();
    }

    Optional<RuleTyped> press(Key key) {
        return fields.get(at).press(key).map(this::with);
    }

    RuleTyped insert(String text) {
        return with(fields.get(at).insert(text));
    }

    private RuleTyped with(Field field) {
        List<Field> changed = new ArrayList<>(fields);
        changed.set(at, field);
        return new RuleTyped(changed, at);
    }
}
