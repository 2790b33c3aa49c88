// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.handbook.Handbook;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.plan.PlanNow;
import sillbook.plan.PlannedPot;
import sillbook.plan.RoomTaken;
import sillbook.plan.Supplies;
import sillbook.plan.WishMet;
import sillbook.reckon.dates.DaySpan;
import sillbook.reckon.dates.Window;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.PotNames;

/**
 * All of a plan as plain lines.
 *
 * @param isKept whether the journal has it
 */
public record PlanLines(Journal journal, LocalDate today, PlanNow now, boolean isKept) {

    /** What it is, its pots, what blooms, how full the places get, the wishes, what it cannot do, what is to buy. */
    public List<String> lines(Supplies supplies) {
        List<String> lines = new ArrayList<>();
        lines.add(heading());
        IntStream.range(0, now.pots().size()).mapToObj(this::pot).forEach(lines::add);
        RibbonLines ribbon = new RibbonLines(now.ribbon());
        lines.addAll(ribbon.weeks());
        ribbon.gaps().ifPresent(lines::add);
        now.rooms().stream().filter(RoomTaken::isUsed).map(RoomLines::of).forEach(room -> lines.add("room: " + room));
        now.wishes().forEach(wish -> lines.addAll(wish(wish)));
        TroubleWords troubles = new TroubleWords(now, journal);
        now.troubles().forEach(trouble -> lines.add("! " + String.join(" ", troubles.lines(trouble))));
        lines.add("to buy: " + new SuppliesWords(journal).toBuy(supplies));
        return lines;
    }

    /** {@code plan A for season 2027-28, by hand: 14 pots, 12 to be made}. */
    private String heading() {
        String how = now.plan().search().isPresent() ? "searched for" : "by hand";
        String kept = isKept ? "" : ", not kept";
        String adopted =
                now.plan().adopted().map(day -> ", adopted " + Days.full(day)).orElse("");
        return "plan " + now.plan().name() + " for season "
                + journal.nameOf(now.plan().season()) + ", " + how + kept + adopted + ": "
                + Counts.of(now.pots().size(), "pot") + (now.toMake() == 0 ? "" : ", " + now.toMake() + " to be made");
    }

    /** {@code a 'Pewter Choir' x3: pot Mon 11 Oct, garage fridge; in Mon 20 Dec, kitchen sill; flowers about Thu 6 Jan (1 to 14 Jan), 11 days}. */
    private String pot(int number) {
        PlannedPot pot = now.pots().get(number);
        PlanNames names = new PlanNames(journal, now.plan());
        boolean isInCold = pot.candidate().cold().isPresent();
        String potting = isInCold ? "in the cold since " : "pot ";
        String before =
                pot.candidate().settled().isPresent() || !pot.candidate().needsCold()
                        ? ""
                        : potting + Days.day(pot.course().potting(), season())
                                + at(pot.course().cold()) + "; ";
        String in = pot.candidate().needsCold() ? "in " : "pot ";
        return names.mark(number) + " " + names.content(number) + ": " + before + in
                + Days.day(pot.course().in(), season()) + at(pot.course().room()) + "; flowers about "
                + window(pot.flowers())
                + ", "
                + Counts.of(pot.inFlower().days(), "day");
    }

    private DaySpan season() {
        return now.ribbon().days();
    }

    private String at(Optional<Id<Place>> place) {
        return place.map(id -> ", " + new PotNames(journal).place(id)).orElse("");
    }

    private String window(Window window) {
        String range = window.isExact() ? "" : " (" + Days.fromTo(window.earliest(), window.latest()) + ")";
        return Days.day(window.likely(), season()) + range;
    }

    private List<String> wish(WishMet met) {
        List<String> lines = new ArrayList<>();
        lines.add("wish: " + String.join(" ", new WishWords(journal).lines(met)));
        new WishChecks(Handbook.standard(), journal.settings())
                .of(met.wish(), today)
                .forEach(check -> lines.add("look: " + check.line()));
        return lines;
    }
}
