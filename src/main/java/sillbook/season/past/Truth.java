// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Stage;
import sillbook.reckon.effects.Proportion;

/**
 * How true the dates were. A window is meant to hold the day 8 times in 10: in one of 10 it comes before, in one after.
 *
 * @param all the windows whose day came, in the order of these days
 */
public record Truth(List<Foretelling> all) {
    /** Of a stage with fewer nothing is said; a judgement of ours. */
    private static final int LEAST_OF_STAGE = 5;

    public Truth {
        all = List.copyOf(all);
    }

    /** Those that held the day. */
    public Proportion held() {
        return held(all);
    }

    private static Proportion held(Collection<Foretelling> some) {
        return new Proportion((int) some.stream().filter(Foretelling::isHeld).count(), some.size());
    }

    /** Those whose day came before they began. */
    public int early() {
        return (int) all.stream().filter(one -> one.daysOff() < 0).count();
    }

    /** Those whose day came after they ended. */
    public int late() {
        return (int) all.stream().filter(one -> one.daysOff() > 0).count();
    }

    public List<Foretelling> missed() {
        return all.stream().filter(one -> !one.isHeld()).toList();
    }

    /** By how many days they missed, early or late: half of them by as many or more. Empty where none did. */
    public Optional<Long> middleMiss() {
        List<Long> days =
                missed().stream().map(one -> Math.abs(one.daysOff())).sorted().toList();
        return days.isEmpty() ? Optional.empty() : Optional.of(days.get(days.size() / 2));
    }

    /** The same by what was to begin, of the stages with enough windows. */
    public Map<Stage, Proportion> byStage() {
        Map<Stage, Proportion> shares = new EnumMap<>(Stage.class);
        for (Stage stage : ForetellingReading.OF_THE_PLANT) {
            Proportion share = held(
                    all.stream().filter(one -> one.window().stage() == stage).toList());
            if (share.of() >= LEAST_OF_STAGE) {
                shares.put(stage, share);
            }
        }
        return shares;
    }
}
