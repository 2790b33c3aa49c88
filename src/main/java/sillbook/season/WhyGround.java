// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import sillbook.model.Band;
import sillbook.model.Trench;
import sillbook.reckon.soil.YearlyWave;

/**
 * How cold it is foretold to get where pots stand buried.
 *
 * @param air the year's wave through the months
 * @param firstDay of the season
 */
public record WhyGround(Trench trench, YearlyWave air, Band band, LocalDate firstDay, GroundForetold result)
        implements Why<GroundForetold> {

    static WhyGround of(Trench trench, YearlyWave air, Band band, LocalDate firstDay) {
        return new WhyGround(trench, air, band, firstDay, GroundForetold.of(trench, air, band, firstDay));
    }

    @Override
    public <T> T fold(Cases<T> cases) {
        return cases.ground(this);
    }

    @Override
    public GroundForetold recomputed() {
        return GroundForetold.of(trench, air, band, firstDay);
    }

    @Override
    public List<String> ruleSources() {
        return List.of("hillel-1982", "campbell-norman-1998", "moene-van-dam-2014");
    }

    @Override
    public Set<Lever> levers() {
        return EnumSet.of(Lever.GROUND);
    }
}
