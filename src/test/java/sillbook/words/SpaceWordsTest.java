// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Id;
import sillbook.model.Length;
import sillbook.model.Place.ColdDays;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Space;
import sillbook.model.Space.Surface;

class SpaceWordsTest {
    private static final Optional<Surface> SHELF =
            Optional.of(new Surface(Length.ofCentimetres(60), Length.ofCentimetres(40)));
    private static final Optional<Length> CLEAR = Optional.of(Length.ofCentimetres(38));
    private static final ColdDays WINTER = new ColdDays(MonthDay.of(10, 1), MonthDay.of(5, 2));

    private static List<String> said(Optional<Surface> shelf, Optional<Length> clear, ColdDays there) {
        return SpaceWords.say(new Space(new Id<>(1, 1), new Id<>(2, 1), shelf, clear, there), LengthUnit.CENTIMETRES);
    }

    @Test
    void itSaysWhatIsKnown() {
        assertThat(said(SHELF, CLEAR, WINTER)).containsExactly("shelf 60 x 40 cm, 38 cm clear", "there 1 Oct to 1 May");
        assertThat(said(SHELF, Optional.empty(), ColdDays.ALL_YEAR)).containsExactly("shelf 60 x 40 cm");
        assertThat(said(Optional.empty(), CLEAR, ColdDays.ALL_YEAR)).containsExactly("38 cm clear above the pots");
        assertThat(said(Optional.empty(), Optional.empty(), ColdDays.ALL_YEAR)).isEmpty();
    }
}
