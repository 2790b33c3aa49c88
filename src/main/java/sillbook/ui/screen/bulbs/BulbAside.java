// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.handbook.FigureName;
import sillbook.model.Event;
import sillbook.model.Purchase;
import sillbook.model.Subject;
import sillbook.model.Variety;
import sillbook.season.Suiting;
import sillbook.text.Initial;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.words.CautionWords;
import sillbook.words.Entries;
import sillbook.words.OriginMarks;
import sillbook.words.PotNames;
import sillbook.words.PurchaseWords;
import sillbook.words.SuitingWords;

/** The two lines in the foot on a variety, or on a purchase. */
record BulbAside(State state) {

    /** On the purchase where there is one, else on the variety. */
    Aside of(Optional<Purchase> purchase, Optional<Variety> variety) {
        return purchase.map(this::of).or(() -> variety.map(this::of)).orElse(Aside.NONE);
    }

    /** What it needs and how it suits pots; then what to beware of, and what was noted last. */
    private Aside of(Variety variety) {
        String name = "'" + variety.name() + "'";
        Suiting suiting = state.almanac().outlook().suiting(variety);
        SuitingWords words =
                new SuitingWords(state.kit().handbook(), state.journal().settings());
        String first = Stream.of(words.why(variety, suiting), needs(variety), SuitingWords.byPacket(variety, suiting))
                .flatMap(Optional::stream)
                .collect(joining(" "));
        String second = Stream.concat(Stream.of(caution(variety)), noted(variety).stream())
                .collect(joining(" "));
        return Aside.of(name, first, second);
    }

    /** {@code Needs ▫15 weeks cold, blooms ▫10 days.} */
    private Optional<String> needs(Variety variety) {
        Optional<String> cold = figure(variety, FigureName.COLD).map(weeks -> "needs " + weeks + " weeks cold");
        Optional<String> bloom = figure(variety, FigureName.IN_BLOOM).map(days -> "blooms " + days + " days");
        String said = Stream.of(cold, bloom).flatMap(Optional::stream).collect(joining(", "));
        return said.isEmpty() ? Optional.empty() : Optional.of(Initial.large(said) + ".");
    }

    private Optional<String> figure(Variety variety, FigureName name) {
        return state.almanac().outlook().figures().find(variety, name).map(OriginMarks::marked);
    }

    private String caution(Variety variety) {
        return "▴ " + new CautionWords(state.kit().handbook(), state.journal().settings()).brief(variety.kind());
    }

    private Optional<String> noted(Variety variety) {
        if (!variety.note().isEmpty()) {
            return Optional.of(variety.note());
        }
        List<Event> events = state.journal().history(new Subject.OfVariety(variety.id()));
        return events.isEmpty()
                ? Optional.empty()
                : Optional.of(Initial.large(new Entries(state.journal())
                        .say(events.get(events.size() - 1).what())));
    }

    private Aside of(Purchase purchase) {
        String name = new PotNames(state.journal()).variety(purchase.variety());
        return Aside.of(name, new PurchaseWords(state.journal()).whole(purchase));
    }
}
