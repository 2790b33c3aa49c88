// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Labels;
import sillbook.model.Pot;

/** What would go with some pots, told before they go. */
record Going(Journal journal, List<Id<Pot>> pots) {

    static Going of(Journal journal, List<Id<Pot>> pots) {
        return new Going(journal, pots);
    }

    /** {@code T8 'Ninepenny Hat' x6 and 6 entries would go: 1 potting, 1 move, 2 checks.} */
    String words() {
        Map<Noun, Integer> counts = new LinkedHashMap<>();
        int entries = 0;
        for (Id<Pot> pot : pots) {
            for (Event event : journal.history(pot)) {
                counts.merge(event.what().fold(NOUNS), 1, Integer::sum);
                entries++;
            }
        }
        List<String> parts = new ArrayList<>();
        counts.forEach((noun, count) -> parts.add(noun.counted(count)));
        String what = parts.isEmpty() ? "" : ": " + String.join(", ", parts);
        return who() + " and " + new Noun("entry", "entries").counted(entries) + " would go" + what + ".";
    }

    private String who() {
        if (pots.size() > 1) {
            return Labels.say(
                    pots.stream().map(pot -> journal.pots().get(pot).label()).toList());
        }
        Pot pot = journal.pots().get(pots.get(0));
        String name = journal.varieties().get(pot.first().variety()).name();
        return pot.label() + " '" + name + "' x" + pot.first().count();
    }

    /** What something is called, alone and in the plural. */
    private record Noun(String one, String many) {
        String counted(int count) {
            return count + " " + (count == 1 ? one : many);
        }
    }

    /** What an entry of each sort is called. */
    private static final Happening.Cases<Noun> NOUNS = new Happening.Cases<>() {
        @Override
        public Noun potted(Happening.Potted happening) {
            return new Noun("potting", "pottings");
        }

        @Override
        public Noun moved(Happening.Moved happening) {
            return new Noun("move", "moves");
        }

        @Override
        public Noun checked(Happening.Checked happening) {
            return new Noun("check", "checks");
        }

        @Override
        public Noun flowered(Happening.Flowered happening) {
            return new Noun("day of bloom", "days of bloom");
        }

        @Override
        public Noun cared(Happening.Cared happening) {
            return new Noun("act of care", "acts of care");
        }

        @Override
        public Noun closed(Happening.Closed happening) {
            return new Noun("end", "ends");
        }

        @Override
        public Noun putOff(Happening.PutOff happening) {
            return new Noun("job put off", "jobs put off");
        }

        @Override
        public Noun leftOut(Happening.LeftOut happening) {
            return new Noun("job left out", "jobs left out");
        }

        @Override
        public Noun jotted(Happening.Jotted happening) {
            return new Noun("note", "notes");
        }

        @Override
        public Noun displayed(Happening.Displayed happening) {
            return new Noun("display", "displays");
        }
    };
}
