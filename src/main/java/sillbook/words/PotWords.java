// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import sillbook.handbook.FigureName;
import sillbook.model.Day;
import sillbook.model.Journal;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Stage;
import sillbook.model.Wish;
import sillbook.reckon.dates.Window;
import sillbook.season.Ahead;
import sillbook.season.ColdTime;
import sillbook.season.Concern;
import sillbook.season.Deadline;
import sillbook.season.Job;
import sillbook.season.Noted;
import sillbook.season.PotNow;
import sillbook.season.Readiness;
import sillbook.season.Seen;
import sillbook.season.Stay;
import sillbook.season.Verdict;

/** How a pot stands, in a sentence or two. */
public record PotWords(Journal journal, LocalDate today) {
    private static final double DAYS_IN_WEEK = 7;

    /** {@code 16 weeks in, about 15 cold enough}: weeks by the calendar, whole or half. */
    public static String cold(int daysIn, int daysColdEnough) {
        String enough = Weeks.number(daysColdEnough / DAYS_IN_WEEK);
        return Weeks.say(daysIn / DAYS_IN_WEEK) + " in, about " + enough + " cold enough";
    }

    public static String cold(ColdTime cold) {
        return cold(cold.daysIn(), cold.daysColdEnough());
    }

    /** {@code roots, shoot 6 cm}; {@code not looked at yet}. */
    public String seen(Seen seen) {
        LengthUnit unit = journal.settings().lengths();
        List<String> parts = new ArrayList<>();
        seen.roots().map(Noted::value).map(Terms.ROOTS::say).ifPresent(parts::add);
        seen.shoot()
                .map(Noted::value)
                .map(shoot -> "shoot " + Lengths.say(shoot, unit))
                .ifPresent(parts::add);
        seen.growth().stream().sorted().map(Terms.GROWTHS::say).forEach(parts::add);
        seen.troubles().stream().sorted().map(Terms.TROUBLES::say).forEach(parts::add);
        return parts.isEmpty() ? "not looked at yet" : String.join(", ", parts);
    }

    /** Its stage with what counts there: weeks and roots in the cold, the day in bloom. Without a full stop. */
    public String stands(PotNow pot) {
        Stage stage = pot.life().stage();
        if (stage == Stage.COLD && pot.figures().needsCold()) {
            return cold(pot.life().cold()) + "; " + seen(pot.life().seen());
        }
        if (stage == Stage.WAITING) {
            return pot.life().potted().isPresent() ? "Potted; not put anywhere yet" : "Waits to be potted";
        }
        String since = pot.life()
                .standing()
                .begun()
                .map(day -> " since " + Days.date(day.likely()) + dayOf(stage, day))
                .orElse("");
        return first(StageWords.in(stage)) + since;
    }

    private String dayOf(Stage stage, Day begun) {
        long day = ChronoUnit.DAYS.between(begun.likely(), today) + 1;
        return stage == Stage.IN_BLOOM ? ", day " + day : "";
    }

    /** {@code In the cellar since 21 Sep}; empty where nobody wrote it. */
    public Optional<String> whereabouts(PotNow pot) {
        return pot.life().stands().map(this::whereabouts);
    }

    private String whereabouts(Stay stay) {
        String place = journal.places().get(stay.place()).name();
        return "In the " + place + " since " + Days.date(stay.since().likely());
    }

    /** Whether a pot may come in, as a sentence. */
    public static String verdict(Readiness readiness) {
        return readiness.verdict() == Verdict.WEEKS_SHORT
                ? "Cold enough about " + Days.day(readiness.coldEnoughOn()) + "."
                : VerdictWords.say(readiness.verdict());
    }

    /** {@code Use by Mon 25 Jan.} */
    public static Optional<String> useBy(PotNow pot) {
        return pot.useBy().map(day -> "Use by " + Days.day(day) + ".");
    }

    /** {@code Bloom about 31 Jan (26 Jan to 7 Feb), ▪10 days.} Empty once it flowers. */
    public Optional<String> bloom(PotNow pot) {
        return ahead(pot, Stage.IN_BLOOM)
                .map(Ahead::window)
                .map(window -> "Bloom about " + Days.date(window.likely()) + " ("
                        + Days.fromTo(window.earliest(), window.latest()) + ")" + lasting(pot) + ".");
    }

    private static String lasting(PotNow pot) {
        return pot.figures()
                .find(FigureName.IN_BLOOM)
                .map(figure -> ", " + OriginMarks.marked(figure) + " days")
                .orElse("");
    }

    /** What a wish is for: {@code a tulip on Sat 30 Jan}. */
    public static String wish(Wish wish) {
        String what = wish.kind().map(kind -> kind.name()).orElse("flowers");
        String when = wish.feast().isEmpty() ? "on " + Days.day(wish.from()) : "for " + wish.feast();
        return (what.equals("flowers") ? what : article(what) + what) + " " + when;
    }

    private static String article(String noun) {
        return "aeiou".indexOf(noun.charAt(0)) < 0 ? "a " : "an ";
    }

    /** Why a job is late and what comes of doing it now; empty while nothing is in danger. */
    public Optional<String> lateness(PotNow pot, Job.OfPots job) {
        boolean late = job.daysLate(today) > 0;
        return job.deadline().filter(by -> late).map(by -> by.fold(new Late(pot)));
    }

    /** The sentence for each sort of deadline that has passed. */
    private final class Late implements Deadline.Cases<String> {
        private final PotNow pot;

        Late(PotNow pot) {
            this.pot = pot;
        }

        @Override
        public String useBy(Deadline.UseBy deadline) {
            return "Past its use-by day: longer in the cold, stems grow long and weak.";
        }

        @Override
        public String forWish(Deadline.ForWish deadline) {
            String comes = ahead(pot, Stage.IN_BLOOM)
                    .map(Ahead::window)
                    .map(Window::likely)
                    .map(day -> ": in today, it flowers about " + Days.date(day))
                    .orElse("");
            return "Late for its wish, " + wish(deadline.wish()) + comes + ".";
        }
    }

    private static Optional<Ahead> ahead(PotNow pot, Stage stage) {
        return pot.ahead().stream().filter(ahead -> ahead.stage() == stage).findFirst();
    }

    /** What to know next of a pot: what is late, else what is amiss, else whether it may come in, else its bloom. */
    public String next(PotNow pot, Optional<Job.OfPots> job) {
        Stream<Optional<String>> candidates = Stream.of(
                job.flatMap(due -> lateness(pot, due)),
                pot.concerns().stream()
                        .filter(concern -> !(concern instanceof Concern.BesideHazard))
                        .findFirst()
                        .map(new ConcernWords(journal)::say),
                job.flatMap(due -> due.putOff().map(PotWords::putOff)),
                bloom(pot),
                pot.readiness().map(PotWords::verdict));
        return candidates
                .flatMap(Optional::stream)
                .filter(Predicate.not(String::isEmpty))
                .findFirst()
                .orElse("");
    }

    /** {@code Put off to Fri 15 Jan: no room.} */
    public static String putOff(Job.Delay delay) {
        return "Put off to " + Days.day(delay.until()) + (delay.reason().isEmpty() ? "" : ": " + delay.reason()) + ".";
    }

    private static String first(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }
}
