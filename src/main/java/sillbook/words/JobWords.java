// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot.Way;
import sillbook.model.Stage;
import sillbook.season.BatchShare;
import sillbook.season.Deadline;
import sillbook.season.Due;
import sillbook.season.Job;
import sillbook.season.Verdict;

/**
 * Jobs as a day's list says them, in the parts it stands them in: what, where, by when.
 *
 * @param today the day they are read on
 */
public record JobWords(Journal journal, LocalDate today) {
    /** For the use-by day and for the last day that makes a wish. */
    private static final Deadline.Cases<String> BY = new Deadline.Cases<>() {
        @Override
        public String useBy(Deadline.UseBy deadline) {
            return "use by ";
        }

        @Override
        public String forWish(Deadline.ForWish deadline) {
            return "wish by ";
        }
    };

    /** {@code bring into cool room}, {@code ready, if rooted}, {@code 15 in cold, 3 in cool}. */
    public String what(Job.OfPots job) {
        Optional<BatchShare> parted = job.batch().filter(BatchShare::isParted);
        if (job.due() == Due.READY && parted.isPresent()) {
            return counts(parted.get(), "in ");
        }
        return plain(job);
    }

    /** The same in the list of a day, where it says why a job comes late: {@code held back: ran warm}. */
    public String inList(Job.OfPots job) {
        boolean isToCome = job.due() == Due.SOON || job.due() == Due.LATER;
        return job.heldBack()
                .filter(by -> isToCome)
                .map(by -> "held back: " + (by.ranWarm() ? "ran warm" : "too cold"))
                .orElseGet(() -> what(job));
    }

    /** The same, whatever else its batch does. */
    public String plain(Job.OfPots job) {
        return switch (job.kind()) {
            case POT_UP -> "pot up" + (job.route().stage() == Stage.WARM_ROOM ? ", warm room" : "");
            case BRING_IN -> bringIn(job);
            case PAST_BLOOM -> "past bloom: done?";
            case WRITE_OUTCOME ->
                job.route().stage() == Stage.IN_BLOOM ? "how is it? 1 to 5" : Terms.JOBS.say(job.kind());
            default -> Terms.JOBS.say(job.kind());
        };
    }

    private String bringIn(Job.OfPots job) {
        boolean unseen = job.readiness()
                .filter(ready -> ready.verdict() != Verdict.MAY_COME_IN)
                .isPresent();
        if (isBuried(job)) {
            return unseen ? "lift; check first" : "lift; bring in";
        }
        if (job.due() == Due.SOON || job.due() == Due.LATER) {
            return unseen ? "ready, if rooted" : "ready";
        }
        if (unseen) {
            return "bring in; check first";
        }
        return job.due() == Due.READY ? "may come in" : "bring into cool room";
    }

    private boolean isBuried(Job.OfPots job) {
        return job.route()
                .from()
                .map(journal.places()::get)
                .filter(place -> place.sort() == Place.Sort.TRENCH)
                .isPresent();
    }

    /** How the pots of a parted batch stand: {@code 15 in cold, 3 in cool}. */
    public static String counts(BatchShare batch, String in) {
        return batch.counts().entrySet().stream().map(entry -> count(entry, in)).collect(Collectors.joining(", "));
    }

    private static String count(Map.Entry<Stage, Integer> entry, String in) {
        String where = switch (entry.getKey()) {
            case COLD -> in + "cold";
            case COOL_ROOM -> in + "cool";
            case WARM_ROOM -> in + "warm";
            case WAITING, IN_BLOOM, AFTER_BLOOM, DONE -> Terms.STAGES.say(entry.getKey());
        };
        return entry.getValue() + " " + where;
    }

    /** {@code to stair window} when it is to be carried, else where it stands. */
    public String where(Job.OfPots job) {
        if (job.due() == Due.READY) {
            return place(job.route().from());
        }
        return job.route()
                .to()
                .map(to -> "to " + place(Optional.of(to.place())))
                .orElseGet(() -> place(job.route().from()));
    }

    private String place(Optional<Id<Place>> place) {
        return place.map(id -> journal.places().get(id).name()).orElse("");
    }

    /** {@code 1 day late}, {@code use by  2 Feb}, {@code wish by  5 Jan}, {@code Thu 14 Jan}; empty for a job of today. */
    public String when(Job.OfPots job) {
        return switch (job.due()) {
            case LATE -> Counts.of(job.daysLate(today), "day") + " late";
            case READY ->
                job.deadline().map(by -> by.fold(BY) + padded(by.day())).orElse("");
            case TODAY -> "";
            case SOON, LATER -> Days.column(job.on());
        };
    }

    /** {@code moist? roots? shoot?}, {@code water? roots? shoot?}: what can be seen in the ways of growing that stand there. */
    public String asks(Job.Round round) {
        List<String> asked = new ArrayList<>(round.pots().isEmpty() ? List.of() : asksOfPots(round));
        if (!round.bulbs().isEmpty()) {
            asked.add("firm?");
        }
        return String.join(" ", asked);
    }

    /** What a round looks at. */
    public static String what(Job.Round round) {
        return RoundWords.what(round.pots().size(), !round.bulbs().isEmpty());
    }

    private List<String> asksOfPots(Job.Round round) {
        Set<Way> ways = EnumSet.noneOf(Way.class);
        round.pots().forEach(pot -> ways.add(journal.pots().get(pot).way()));
        List<String> asked = new ArrayList<>();
        boolean isAnyInMix = !ways.stream().allMatch(Way::isOverWater);
        if (isAnyInMix) {
            asked.add("moist?");
        }
        if (ways.stream().anyMatch(Way::isOverWater)) {
            asked.add("water?");
        }
        if (ways.stream().anyMatch(Way::showsRoots)) {
            asked.add("roots?");
        }
        asked.add("shoot?");
        if (round.asksForSoftness()) {
            asked.add("soft?");
        }
        return asked;
    }

    /** {@code last  2 Jan}. */
    public static String last(Job.Round round) {
        return "last " + padded(round.last());
    }

    /** The names of places, the first letters small as they are: {@code porch, stair window}. */
    public String places(List<Id<Place>> places) {
        return places.stream().map(id -> journal.places().get(id).name()).collect(Collectors.joining(", "));
    }

    /** A date in six columns. */
    private static String padded(LocalDate day) {
        return (day.getDayOfMonth() < 10 ? " " : "") + Days.date(day);
    }
}
