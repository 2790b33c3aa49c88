// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.handbook.Origin;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.OwnFigure;
import sillbook.model.Settings;
import sillbook.model.Variety;
import sillbook.model.Variety.BloomSeason;
import sillbook.model.Variety.ForPots;
import sillbook.model.Variety.PacketForcing;
import sillbook.model.Variety.Scent;
import sillbook.season.Suiting.Basis;
import sillbook.season.Suiting.Standing;

/** What says how a variety suits pots, and which of several words counts. */
class SuitingTest {
    private static final Journal EMPTY = Journal.empty(Settings.initial(ZoneOffset.UTC));
    private static final Kind LARGE_CUPPED = new Kind("daffodil", "2");

    private static Variety variety(Kind kind, double height, PacketForcing packet, ForPots mark) {
        Optional<Length> tall = height > 0 ? Optional.of(Length.ofCentimetres(height)) : Optional.empty();
        return new Variety(
                new Id<>(1, 1), "Goose Errand", "", kind, tall, BloomSeason.MID, "", Scent.NONE, packet, mark, "");
    }

    private static Suiting of(Kind kind, double height) {
        return of(EMPTY, variety(kind, height, PacketForcing.NOT_STATED, ForPots.NOT_MARKED));
    }

    private static Suiting of(Journal journal, Variety variety) {
        return Suiting.of(variety, Figures.of(journal, Handbook.standard(), LocalDate.EPOCH), Handbook.standard());
    }

    private static Standing standing(String kind, String group) {
        return of(new Kind(kind, group), 0).standing();
    }

    @Test
    void classesOfTulipsStandInOrder() {
        assertThat(List.of(
                        standing("tulip", "Single Early"),
                        standing("tulip", "Triumph"),
                        standing("tulip", "Double Early"),
                        standing("tulip", "Kaufmanniana"),
                        standing("tulip", "Greigii"),
                        standing("tulip", "Fosteriana"),
                        standing("tulip", "Parrot"),
                        standing("tulip", "Darwin Hybrid"),
                        standing("tulip", "Single Late")))
                .containsExactly(
                        Standing.FIRST,
                        Standing.FIRST,
                        Standing.WELL,
                        Standing.WELL,
                        Standing.WELL,
                        Standing.WELL,
                        Standing.NO_WORD,
                        Standing.TALL,
                        Standing.TALL);
    }

    @Test
    void nearlyAllHyacinthsSuitPotsAndSomeKindsHaveNoClasses() {
        assertThat(of(Kind.of("hyacinth"), 0)).isEqualTo(new Suiting(Standing.FIRST, Basis.KIND, Optional.empty()));
        assertThat(standing("prepared hyacinth", "")).isEqualTo(Standing.FIRST);
        assertThat(of(Kind.of("crocus"), 10))
                .isEqualTo(new Suiting(Standing.NO_CLASSES, Basis.NOTHING, Optional.empty()));
        assertThat(standing("sill lily", "")).isEqualTo(Standing.NO_CLASSES);
        assertThat(of(Kind.of("tulip"), 0).standing()).isEqualTo(Standing.NO_WORD);
    }

    @Test
    void daffodilsStandByTheirHeight() {
        assertThat(of(LARGE_CUPPED, 25).standing()).isEqualTo(Standing.FIRST);
        assertThat(of(LARGE_CUPPED, 25.1).standing()).isEqualTo(Standing.TALL);
        assertThat(of(LARGE_CUPPED, 25.1).limit().orElseThrow().sources()).containsExactly("common-practice");
        assertThat(of(LARGE_CUPPED, 0).standing()).as("height not known").isEqualTo(Standing.NO_WORD);
    }

    @Test
    void aFigureOfTheGrowersOwnMovesTheLimit() {
        OwnFigure own = new OwnFigure(
                new Id<>(1, 2),
                OwnFigure.Scope.of(Kind.of("daffodil")),
                FigureName.SMALL_POT_HEIGHT.key(),
                Optional.of(OwnFigure.Range.of(35)),
                "");
        Variety middling = variety(LARGE_CUPPED, 33, PacketForcing.NOT_STATED, ForPots.NOT_MARKED);

        Suiting suiting = of(EMPTY.with(List.of(new Edit.Put(own))), middling);

        assertThat(of(EMPTY, middling).standing()).isEqualTo(Standing.TALL);
        assertThat(suiting.standing()).isEqualTo(Standing.FIRST);
        assertThat(suiting.limit().orElseThrow().origin()).isEqualTo(Origin.OWN_FOR_KIND);
    }

    @Test
    void theGrowersMarkComesBeforeThePacketAndThePacketBeforeTheRest() {
        Kind triumph = new Kind("tulip", "Triumph");
        Suiting byPacket = of(EMPTY, variety(triumph, 45, PacketForcing.NO, ForPots.NOT_MARKED));

        assertThat(byPacket).isEqualTo(new Suiting(Standing.UNSUITED, Basis.PACKET, Optional.empty()));
        assertThat(of(EMPTY, variety(triumph, 45, PacketForcing.NO, ForPots.SUITS)))
                .isEqualTo(new Suiting(Standing.FIRST, Basis.OWN_MARK, Optional.empty()));
        assertThat(of(EMPTY, variety(triumph, 45, PacketForcing.YES, ForPots.TALL))
                        .standing())
                .isEqualTo(Standing.TALL);
        assertThat(of(EMPTY, variety(triumph, 45, PacketForcing.YES, ForPots.UNSUITED))
                        .standing())
                .isEqualTo(Standing.UNSUITED);
        assertThat(of(EMPTY, variety(triumph, 45, PacketForcing.YES, ForPots.NOT_MARKED))
                        .basis())
                .isEqualTo(Basis.CLASS);
    }
}
