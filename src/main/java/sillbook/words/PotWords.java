// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.reckon.dates.Window;
import sillbook.season.Ahead;
import sillbook.season.ColdTime;
import sillbook.season.Concern;
import sillbook.season.Deadline;
import sillbook.season.Job;
import sillbook.season.PotLife;
import sillbook.season.PotNow;

/** How a pot stands, in sentences. */
public record PotWords(Journal journal, LocalDate today) {

    private static final Vocabulary<Care> WEARS = Vocabulary.<Care>of("care that stays")
            .with(Care.HOODED, "hooded")
            .with(Care.STAKED, "staked")
            .with(Care.INTO_OUTER_POT, "in an outer pot");

    /**
     * {@code 16 weeks in, about 15 cold enough}: weeks by the calendar, whole or half; only {@code 16 weeks in} where all of
     * them count, or nearly. Without a full stop.
     */
    public static String cold(int daysIn, int daysColdEnough) {
        String in = Weeks.sayDays(daysIn) + " in";
        String enough = Weeks.number(Weeks.ofDays(daysColdEnough));
        return enough.equals(Weeks.number(Weeks.ofDays(daysIn))) ? in : in + ", about " + enough + " cold enough";
    }

    /** The same of a pot; empty while it has had no cold, and where it needs none. */
    public static Optional<String> cold(PotNow pot) {
        ColdTime cold = pot.life().cold();
        return pot.coldNeed().filter(need -> cold.daysIn() > 0).map(need -> cold(cold.daysIn(), cold.daysColdEnough()));
    }

    /** What it is made of: {@code 'Marrow Lane' x5, tulip Triumph; 19 cm across; bowl without holes}. */
    public static String made(Journal journal, Pot pot) {
        Stream<String> plantings = pot.plantings().stream()
                .map(planting -> new PotNames(journal).variety(planting.variety()) + " x" + planting.count() + ", "
                        + journal.varieties().get(planting.variety()).kind());
        Stream<String> size = pot
                .container()
                .map(container -> journal.containers().get(container).name())
                .or(() -> pot.across()
                        .map(across -> Lengths.say(across, journal.settings().lengths()) + " across"))
                .stream();
        Stream<String> mix =
                pot.pottingMix().map(each -> journal.pottingMixes().get(each).name()).stream();
        Stream<String> filled = Stream.of(PottingWords.say(pot.potting())).filter(said -> !said.isEmpty());
        Stream<String> way = pot.way() == Pot.Way.DRAINED ? Stream.of() : Stream.of(Terms.WAYS.say(pot.way()));
        Stream<String> note = pot.note().isEmpty() ? Stream.of() : Stream.of(pot.note());
        return Stream.of(plantings, size, mix, filled, way, note)
                .flatMap(some -> some)
                .collect(Collectors.joining("; "));
    }

    /**
     * What it has on and about it now: {@code hooded since 3 Jan; staked; in an outer pot; in display hall table with C1 H2}.
     * Empty when it has nothing.
     *
     * @param together the pots of its display, itself among them
     */
    public static String dressed(PotLife life, List<Id<Pot>> together, PotNames names) {
        Stream<String> display = life.display().stream().map(in -> {
            List<Id<Pot>> others = together.stream()
                    .filter(pot -> !pot.equals(life.pot().id()))
                    .toList();
            return "in display " + in.value() + (others.isEmpty() ? "" : " with " + names.labels(others));
        });
        Stream<String> cares = life.dress().stream()
                .map(care -> WEARS.say(care.value()) + " since "
                        + Days.date(care.day().likely()));
        return Stream.concat(cares, display).collect(Collectors.joining("; "));
    }

    /** {@code Use by Mon 25 Jan.} */
    public static Optional<String> useBy(PotNow pot) {
        return pot.useBy().map(day -> "Use by " + Days.day(day) + ".");
    }

    /** {@code Bloom about 31 Jan (26 Jan to 7 Feb).} Empty once it flowers. */
    public static Optional<String> bloom(PotNow pot) {
        return bloomWindow(pot)
                .map(window -> "Bloom about " + Days.date(window.likely()) + " ("
                        + Days.fromTo(window.earliest(), window.latest()) + ").");
    }

    private static Optional<Window> bloomWindow(PotNow pot) {
        return pot.ahead().stream()
                .filter(ahead -> ahead.stage() == Stage.IN_BLOOM)
                .findFirst()
                .map(Ahead::window);
    }

    /** What matters most of a pot: that it is late, else what is amiss, else that its job was put off. */
    public Optional<String> matters(PotNow pot) {
        Stream<Optional<String>> candidates = Stream.of(
                pot.next().flatMap(job -> late(pot, job)),
                concern(pot).map(new ConcernWords(journal)::say),
                pot.next().flatMap(Job.OfPots::putOff).map(PotWords::putOff));
        return candidates.flatMap(Optional::stream).findFirst();
    }

    /** What is amiss with the pot itself; what stands beside it is said where it stands. */
    private static Optional<Concern> concern(PotNow pot) {
        return pot.concerns().stream()
                .filter(concern -> !(concern instanceof Concern.BesideHazard))
                .findFirst();
    }

    /** Why it is late, and what comes of doing it now. */
    private Optional<String> late(PotNow pot, Job.OfPots job) {
        return job.deadline().filter(by -> job.daysLate(today) > 0).map(by -> by.fold(new Late(pot)));
    }

    /** The sentence for each sort of deadline that has passed. */
    private record Late(PotNow pot) implements Deadline.Cases<String> {
        @Override
        public String useBy(Deadline.UseBy deadline) {
            return "Past its use-by day, " + Days.day(deadline.day()) + ": stems grow long and weak.";
        }

        @Override
        public String forWish(Deadline.ForWish deadline) {
            String comes = bloomWindow(pot)
                    .map(window -> ": in today, it flowers about " + Days.date(window.likely()))
                    .orElse("");
            String feast = deadline.wish().feast();
            String when = feast.isEmpty() ? "on " + Days.day(deadline.wish().to()) : "for " + feast;
            return "Late for its wish " + when + comes + ".";
        }
    }

    /** {@code Put off to Fri 15 Jan: no room.} */
    private static String putOff(Job.Delay delay) {
        return "Put off to " + Days.day(delay.until()) + (delay.reason().isEmpty() ? "" : ": " + delay.reason()) + ".";
    }
}
