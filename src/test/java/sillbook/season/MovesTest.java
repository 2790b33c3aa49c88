// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Happening.End;
import sillbook.model.Place.Sort;
import sillbook.model.Season;
import sillbook.model.Stage;

class MovesTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);

    private static Moves at(Winter told, String place) {
        Outlook outlook = Outlook.of(told.journal(), Handbook.standard(), TODAY);
        return Moves.of(told.journal(), outlook, new Season(2026)).getOrDefault(told.placeId(place), Moves.NONE);
    }

    private static LocalDate day(int year, int month, int day) {
        return LocalDate.of(year, month, day);
    }

    private static Winter house() {
        return winter().place("cellar", Sort.CELLAR).place("porch", Sort.PORCH).place("loft", Sort.OTHER);
    }

    @Test
    void aPotComesAndGoes() {
        Winter told = house().pot("T1", "Tuesday Coat", "tulip")
                .potted("5 oct", "cellar")
                .moved("4 jan", "porch")
                .pot("H1", "Inkwell", "hyacinth")
                .potted("1 oct", "cellar");

        assertThat(at(told, "cellar"))
                .isEqualTo(new Moves(List.of(day(2026, 10, 1), day(2026, 10, 5)), List.of(day(2027, 1, 4))));
        assertThat(at(told, "porch").in()).containsExactly(day(2027, 1, 4));
        assertThat(at(told, "porch").out()).isEmpty();
        assertThat(at(told, "loft").isEmpty()).isTrue();
        assertThat(at(told, "porch").isEmpty()).isFalse();
    }

    @Test
    void anotherStageAtTheSamePlaceIsNoMove() {
        Winter told = house().pot("T1", "Tuesday Coat", "tulip")
                .potted("5 oct", "cellar")
                .moved("20 dec", "cellar", Stage.COOL_ROOM);

        assertThat(at(told, "cellar").in()).containsExactly(day(2026, 10, 5));
        assertThat(at(told, "cellar").out()).isEmpty();
    }

    @Test
    void aPotThatIsDoneHasLeft() {
        Winter told = house().pot("T1", "Tuesday Coat", "tulip")
                .potted("5 oct", "cellar")
                .closed("20 dec", End.BROKEN);

        assertThat(at(told, "cellar").out()).containsExactly(day(2026, 12, 20));
    }
}
