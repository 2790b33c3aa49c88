// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.Source;
import sillbook.model.OwnFigure.Range;

/**
 * How long a stage takes, learnt from own pots.
 *
 * @param setAside what holds instead, where the handbook's was asked for
 */
public record WhyLearnt(LengthGiven given, Optional<SetAside> setAside, Range result) implements Why<Range> {
    /** What holds, because nothing else was asked for. */
    static WhyLearnt of(LengthGiven given) {
        return new WhyLearnt(given, Optional.empty(), given.range());
    }

    public LearntLength length() {
        return given.length();
    }

    @Override
    public <T> T fold(Cases<T> cases) {
        return cases.learnt(this);
    }

    @Override
    public Range recomputed() {
        return setAside.map(other -> other.holds().range()).orElseGet(given::range);
    }

    /** What it grew from, or what holds instead of it. */
    @Override
    public List<FigureInForce> figures() {
        return List.of(setAside.map(SetAside::holds).orElse(length().published()));
    }

    /** How much of it is believed at the outset is a judgement of ours. */
    @Override
    public List<String> ruleSources() {
        return List.of(Source.COMMON_PRACTICE);
    }

    @Override
    public Set<Lever> levers() {
        return EnumSet.of(Lever.A_DAY, Lever.OWN_FIGURE);
    }
}
