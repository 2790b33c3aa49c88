// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.Optional;
import sillbook.model.Choice;
import sillbook.model.Choice.Mark;
import sillbook.model.Journal;
import sillbook.season.past.Candidate;
import sillbook.season.past.Choosing;
import sillbook.words.ReasonWords;

/** What there is to choose from, as JSON. */
public final class ChoosingJson {
    private final Named named;
    private final ReasonWords words;

    private ChoosingJson(Journal journal) {
        named = new Named(journal);
        words = new ReasonWords(journal);
    }

    /** The document of {@code sillbook choose --json}. */
    public static String write(Journal journal, Choosing choosing) {
        ChoosingJson json = new ChoosingJson(journal);
        return Answer.write(new Fields()
                .text("forSeason", json.named.season(choosing.season()))
                .number("chosen", choosing.chosen().size())
                .number("bulbs", choosing.bulbs())
                .list("cost", choosing.cost(), MoneyJson::of)
                .number("withoutPrice", choosing.withoutPrice())
                .list("varieties", choosing.candidates(), json::candidate));
    }

    private Fields candidate(Candidate candidate) {
        Optional<Mark> mark = candidate.choice().map(Choice::mark);
        return new Fields()
                .text("variety", candidate.variety().name())
                .text("mark", mark.map(ChoosingJson::sort).orElse("undecided"))
                .whole("bulbs", candidate.chosen())
                .text("reason", candidate.choice().flatMap(Choice::whySetAside))
                .object("before", candidate.before(), this::before)
                .number("potsScored", candidate.scores().size())
                .decimal("meanScore", candidate.mean().stream().boxed().findFirst())
                .number("inHand", candidate.inHand())
                .number("toCome", candidate.onOrder())
                .number("toOrder", candidate.toOrder())
                .object("priceEach", candidate.each(), MoneyJson::of)
                .texts("because", candidate.reasons().stream().map(words::say).toList());
    }

    private static String sort(Mark mark) {
        return mark.fold(chosen -> "chosen", setAside -> "set aside", () -> "undecided");
    }

    private Fields before(Choice choice) {
        return new Fields()
                .text("season", named.season(choice.season()))
                .text("mark", sort(choice.mark()))
                .whole("bulbs", choice.bulbs())
                .text("reason", choice.whySetAside());
    }
}
