// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Place;
import sillbook.model.Place.Hazard;
import sillbook.season.Due;
import sillbook.season.PlaceNow;
import sillbook.season.Today.Attention;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.today.AttentionSign;

/** The sign before a place: what wants attention there, else that its round is due. */
record PlaceSign(Sign sign, Style style) {
    private static final int COLUMN = 2;
    /** What a grower has to do something about where bulbs stand; pets and children are for the kinds' own cautions. */
    private static final Set<Hazard> CAUTIONED = EnumSet.complementOf(EnumSet.of(Hazard.PETS, Hazard.CHILDREN));

    static Optional<PlaceSign> of(State state, PlaceNow now) {
        return attention(state, now.place()).stream()
                .findFirst()
                .map(AttentionSign::of)
                .map(sign -> new PlaceSign(sign, AttentionSign.style(sign)))
                .or(() -> now.round()
                        .filter(round -> round.due() == Due.TODAY)
                        .map(round -> new PlaceSign(Sign.NOW, Style.BOLD)));
    }

    /** What today says of a place, but for its hazards: these have a sign of their own. */
    static List<Attention> attention(State state, Place place) {
        return state.almanac().today().places().stream()
                .filter(attention -> attention.place().equals(place.id()))
                .filter(attention -> !(attention instanceof Attention.BesideHazard))
                .toList();
    }

    static boolean isCautioned(Place place) {
        return place.hazards().stream().anyMatch(CAUTIONED::contains);
    }

    void render(Rect line, Cells cells) {
        cells.put(line.column() + COLUMN, line.row(), sign, style);
    }
}
