// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Facts;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.MixedPot;
import sillbook.reckon.dates.Need;
import sillbook.reckon.dates.Schedule;
import sillbook.reckon.dates.Stages;
import sillbook.reckon.dates.Window;

/**
 * What the coming days of a pot are reckoned from, and the reckoning.
 *
 * <p>What has begun is added up by {@link Schedule}. What should have begun by now and has not is taken to begin today
 * at the earliest, and all that follows from there.
 *
 * @param shares the bulbs in the pot
 * @param coldNeed the cold these need; empty when none does
 * @param coldAhead what is to come of the cold; of a pot that stands there
 * @param facts the days that are fixed; of a pot in the cold the day from which its cold, without a break, would be as
 *     long as it is
 * @param next the next stage to begin; empty when none is left
 * @param begins when that begins, where this follows from something else than the stage before it
 * @param wished the day on which a plan, or a wish, would have it begin
 * @param meantIn the day on which a plan would have it come in; of a pot whose cold is still to begin
 * @param slack how uncertain the last day is from which is reckoned
 */
public record Prospect(
        List<Share> shares,
        Optional<ColdNeed> coldNeed,
        Optional<ColdAhead> coldAhead,
        Facts facts,
        Optional<Milestone> next,
        Optional<Window> begins,
        Optional<LocalDate> wished,
        Optional<LocalDate> meantIn,
        Slack slack,
        LocalDate today) {

    /** Ten years: far more than counts, and as many as {@link Facts} takes. */
    private static final int MOST_DRY_DAYS = 3653;

    public Prospect {
        shares = List.copyOf(shares);
    }

    /**
     * Bulbs of one sort in the pot.
     *
     * @param dry the cold they had before they were potted
     */
    public record Share(Need need, DryCold dry) {

        Optional<Schedule> schedule(Facts facts) {
            return Schedule.reckon(
                    need,
                    new Facts(facts.potted(), facts.happened(), facts.wish(), Math.min(dry.days(), MOST_DRY_DAYS)));
        }

        /** What of its cold has to follow potting. */
        Optional<DayCount> pottedCold() {
            LocalDate any = LocalDate.EPOCH;
            return schedule(Facts.NONE.with(Milestone.COLD, any))
                    .filter(schedule -> need.cold().isPresent())
                    .map(schedule -> schedule.stages().broughtOut())
                    .map(out -> DayCount.of(
                            Dates.between(any, out.earliest()),
                            Dates.between(any, out.likely()),
                            Dates.between(any, out.latest())));
        }

        /** When a stage should begin for a flower on that day; empty where this sort has no such stage. */
        Optional<Window> neededFor(LocalDate flower, Milestone milestone) {
            return schedule(Facts.NONE.withWish(flower))
                    .flatMap(schedule -> schedule.stages().at(milestone));
        }
    }

    /** Days by which a day that is only about known may lie earlier or later. */
    public record Slack(int earlier, int later) {
        static final Slack NONE = new Slack(0, 0);
    }

    /** When each stage to come begins. */
    public Map<Milestone, Window> windows() {
        Map<Milestone, Window> windows = new EnumMap<>(Milestone.class);
        next.ifPresent(milestone -> {
            Window first = first(milestone);
            windows.put(milestone, first);
            windows.putAll(following(milestone, first));
        });
        return windows;
    }

    /** The day its usual weeks of cold are had; empty when nothing in it needs cold, or it has not begun. */
    public Optional<LocalDate> coldEnoughOn() {
        return comingIn().map(Window::likely);
    }

    /** The last good day in the cold; after it the longest published cold is past. */
    public Optional<LocalDate> useBy() {
        return comingIn().map(Window::latest);
    }

    /** When it may leave the cold. */
    private Optional<Window> comingIn() {
        return coldAhead.flatMap(cold -> coldNeed.map(ColdNeed::potted).map(cold::of));
    }

    private Window first(Milestone milestone) {
        Optional<Window> fromCold = isInCold() ? comingIn() : Optional.empty();
        Window window = loose(begins.or(() -> fromCold)
                .or(() -> stages(facts).flatMap(stages -> stages.at(milestone)))
                .orElseThrow());
        LocalDate likely = Dates.later(today, adopted(window));
        return new Window(window.earliest(), likely, Dates.later(likely, window.latest()));
    }

    private boolean isInCold() {
        return facts.happened().keySet().equals(Set.of(Milestone.COLD));
    }

    private Window loose(Window window) {
        return new Window(
                window.earliest().minusDays(slack.earlier()),
                window.likely(),
                window.latest().plusDays(slack.later()));
    }

    /** The wished day, inside what is possible: not before the likely day in the cold, and not after the latest. */
    private LocalDate adopted(Window window) {
        LocalDate least = isInCold() ? window.likely() : window.earliest();
        return wished.map(day -> Dates.earlier(window.latest(), Dates.later(least, day)))
                .orElse(window.likely());
    }

    private Map<Milestone, Window> following(Milestone begun, Window first) {
        Map<Milestone, Window> windows = new EnumMap<>(Milestone.class);
        Optional<Stages> soonest = stages(beginning(begun, Dates.later(today, first.earliest())));
        Optional<Stages> likely = stages(asMeant(begun, beginning(begun, first.likely())));
        Optional<Stages> last = stages(beginning(begun, first.latest()));
        for (Milestone milestone : Milestone.values()) {
            if (milestone.compareTo(begun) > 0) {
                window(milestone, soonest, likely, last).ifPresent(window -> windows.put(milestone, window));
            }
        }
        return windows;
    }

    /** The same, with the day on which the plan would have it come in, or the nearest one on which it may. */
    private Facts asMeant(Milestone begun, Facts known) {
        return begun == Milestone.COLD
                ? meantIn.flatMap(day -> stages(known).map(usual -> comingIn(known, usual, day)))
                        .orElse(known)
                : known;
    }

    private static Facts comingIn(Facts known, Stages usual, LocalDate day) {
        Window out = usual.broughtOut();
        Milestone room = usual.coolRoom().isPresent() ? Milestone.COOL_ROOM : Milestone.WARM_ROOM;
        return known.with(room, Dates.earlier(out.latest(), Dates.later(out.likely(), day)));
    }

    private static Optional<Window> window(
            Milestone milestone, Optional<Stages> soonest, Optional<Stages> likely, Optional<Stages> last) {
        return soonest.flatMap(stages -> stages.at(milestone))
                .flatMap(from -> likely.flatMap(stages -> stages.at(milestone))
                        .flatMap(about -> last.flatMap(stages -> stages.at(milestone))
                                .map(to -> new Window(from.earliest(), about.likely(), to.latest()))));
    }

    /** What would be known if the stage began on that day. */
    Facts beginning(Milestone milestone, LocalDate day) {
        boolean hasStarted = facts.potted().isPresent() || !facts.happened().isEmpty();
        return (hasStarted ? withColdBefore(day) : facts.withPotted(day)).with(milestone, day);
    }

    /** What was read may be enough before the calendar, by which the cold is still to go on, says that it began. */
    private Facts withColdBefore(LocalDate day) {
        return Optional.ofNullable(facts.happened().get(Milestone.COLD))
                .filter(day::isBefore)
                .map(later -> facts.with(Milestone.COLD, day))
                .orElse(facts);
    }

    private Optional<Stages> stages(Facts known) {
        List<Stages> each = shares.stream()
                .flatMap(share -> share.schedule(known).stream())
                .map(Schedule::stages)
                .toList();
        return each.isEmpty() ? Optional.empty() : Optional.of(MixedPot.together(each));
    }
}
