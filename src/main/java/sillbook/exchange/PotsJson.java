// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.season.Ahead;
import sillbook.season.PotNow;
import sillbook.words.Entries;

/** Pots as JSON. */
public final class PotsJson {
    private final Named named;
    private final JobJson jobs;

    private PotsJson(Journal journal, LocalDate today) {
        this.named = new Named(journal);
        this.jobs = new JobJson(named, today);
    }

    /** The document of {@code sillbook pots --json}. */
    public static String list(Journal journal, LocalDate today, List<PotNow> pots) {
        PotsJson json = new PotsJson(journal, today);
        return new Fields()
                .day("day", today)
                .list("pots", pots, json::pot)
                .texts("warnings", List.of())
                .texts("assumed", List.of())
                .write();
    }

    /** The document of {@code sillbook pot LABEL --json}. */
    public static String one(Journal journal, LocalDate today, PotNow pot) {
        PotsJson json = new PotsJson(journal, today);
        Entries entries = new Entries(journal);
        List<Event> history = journal.history(pot.life().pot().id());
        return json.pot(pot)
                .list(
                        "history",
                        history,
                        event -> new Fields().day("day", event.day().likely()).text("says", entries.say(event.what())))
                .texts("warnings", List.of())
                .texts("assumed", List.of())
                .write();
    }

    private Fields pot(PotNow now) {
        Id<Pot> id = now.life().pot().id();
        return named.pots(List.of(id))
                .code("stage", now.life().stage())
                .text("place", named.place(now.life().stands().map(stay -> stay.place())))
                .number("daysInCold", now.life().cold().daysIn())
                .number("daysColdEnough", now.life().cold().daysColdEnough())
                .whole("coldNeededDays", now.coldNeed().map(need -> need.whole().typical()))
                .day("useBy", now.useBy())
                .list("ahead", now.ahead(), PotsJson::ahead)
                .object("next", now.next(), jobs::ofPots);
    }

    private static Fields ahead(Ahead ahead) {
        Optional<String> origin = ahead.figure().map(figure -> figure.origin().word());
        return new Fields().code("stage", ahead.stage()).window(ahead.window()).text("origin", origin);
    }
}
