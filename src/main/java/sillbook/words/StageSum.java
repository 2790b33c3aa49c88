// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Need;
import sillbook.season.Prospect;
import sillbook.words.Explanation.Line;

/** The sum behind the day a stage begins: what has begun, and the lengths added to the last of it. */
record StageSum(Prospect prospect, Milestone milestone) {

    List<Line> lines() {
        List<Line> sum = new ArrayList<>();
        prospect.facts().potted().ifPresent(day -> sum.add(new Line("potted", "", Days.day(day))));
        prospect.facts().happened().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(begun ->
                        sum.add(new Line(MilestoneWords.say(begun.getKey()), "has begun", Days.day(begun.getValue()))));
        prospect.shares().stream().findFirst().ifPresent(share -> add(share.need(), sum));
        prospect.wished().ifPresent(day -> sum.add(new Line("wish", "inside what is possible", Days.day(day))));
        sum.add(new Line("not before", "today", Days.day(prospect.today())));
        return sum;
    }

    private void add(Need need, List<Line> sum) {
        if (lies(Milestone.COLD)) {
            need.cold().ifPresent(cold -> sum.add(new Line("and", "in the cold, dry weeks with it", weeks(cold))));
        }
        if (milestone == Milestone.WARM_ROOM && lies(Milestone.COOL_ROOM)) {
            need.coolRoom().ifPresent(cool -> sum.add(new Line("and", "in the cool room", days(cool))));
        }
        if (milestone.compareTo(Milestone.BLOOM) >= 0 && lies(Milestone.WARM_ROOM)) {
            String from = need.cold().isPresent() ? "out of the cold" : "from potting";
            sum.add(new Line("and", from + ", to the first flower", weeks(need.afterCold())));
            Optional.of(need.coolHad(prospect.facts()))
                    .filter(cool -> cool.high() > 0 && lastBegun().equals(Optional.of(Milestone.WARM_ROOM)))
                    .ifPresent(cool -> sum.add(new Line("less", "the cool room", days(cool))));
        }
        if (milestone == Milestone.AFTER_BLOOM) {
            need.inBloom().ifPresent(bloom -> sum.add(new Line("and", "in bloom", days(bloom))));
        }
    }

    /** Whether a stage, all of it, lies between what has begun and the stage asked for. */
    private boolean lies(Milestone stage) {
        return stage.compareTo(milestone) < 0
                && lastBegun().map(begun -> begun.compareTo(stage) <= 0).orElse(true);
    }

    private Optional<Milestone> lastBegun() {
        return prospect.facts().happened().keySet().stream()
                .filter(begun -> begun.compareTo(milestone) < 0)
                .max(Milestone::compareTo);
    }

    private static String weeks(DayCount days) {
        return Weeks.range(Weeks.ofDays(days.low()), Weeks.ofDays(days.typical()), Weeks.ofDays(days.high()));
    }

    private static String days(DayCount days) {
        return days.low() == days.high()
                ? Counts.of(days.low(), "day")
                : days.low() + ", " + days.typical() + ", " + days.high() + " days";
    }
}
