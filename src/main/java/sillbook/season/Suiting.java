// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Optional;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.handbook.GroupEntry;
import sillbook.handbook.Handbook;
import sillbook.handbook.KindEntry;
import sillbook.handbook.Suits;
import sillbook.model.Length;
import sillbook.model.Variety;
import sillbook.model.Variety.ForPots;
import sillbook.model.Variety.PacketForcing;

/**
 * How a variety suits pots, and what says so. The grower's own mark comes before the packet, the packet before its height
 * where there is a figure for that, the height before what is said of its class.
 *
 * @param limit the most height for small pots, where the height says so
 */
public record Suiting(Standing standing, Basis basis, Optional<FigureInForce> limit) {

    /** Where it stands among the others, the best first. */
    public enum Standing {
        FIRST,
        WELL,
        /** Its kind has no classes of which one could be better than another. */
        NO_CLASSES,
        NO_WORD,
        TALL,
        UNSUITED
    }

    /** What says so. */
    public enum Basis {
        OWN_MARK,
        PACKET,
        HEIGHT,
        CLASS,
        KIND,
        NOTHING
    }

    private static Suiting of(Standing standing, Basis basis) {
        return new Suiting(standing, basis, Optional.empty());
    }

    public static Suiting of(Variety variety, Figures figures, Handbook handbook) {
        return byMark(variety.forPots())
                .or(() -> byPacket(variety.packetForcing()))
                .or(() -> byHeight(variety, figures))
                .or(() -> byClass(variety, handbook))
                .orElseGet(() -> byKind(variety, handbook));
    }

    private static Optional<Suiting> byMark(ForPots mark) {
        return switch (mark) {
            case NOT_MARKED -> Optional.empty();
            case SUITS -> Optional.of(of(Standing.FIRST, Basis.OWN_MARK));
            case TALL -> Optional.of(of(Standing.TALL, Basis.OWN_MARK));
            case UNSUITED -> Optional.of(of(Standing.UNSUITED, Basis.OWN_MARK));
        };
    }

    private static Optional<Suiting> byPacket(PacketForcing packet) {
        return packet == PacketForcing.NO ? Optional.of(of(Standing.UNSUITED, Basis.PACKET)) : Optional.empty();
    }

    private static Optional<Suiting> byHeight(Variety variety, Figures figures) {
        return variety.height()
                .map(Length::centimetres)
                .flatMap(height -> figures.find(variety, FigureName.SMALL_POT_HEIGHT)
                        .map(limit -> new Suiting(
                                height <= limit.range().typical() ? Standing.FIRST : Standing.TALL,
                                Basis.HEIGHT,
                                Optional.of(limit))));
    }

    private static Optional<Suiting> byClass(Variety variety, Handbook handbook) {
        return group(variety, handbook)
                .filter(group -> group.suits() != Suits.NO_WORD)
                .map(group -> of(standing(group.suits()), Basis.CLASS));
    }

    /** The class or division of a variety, where the handbook has it. */
    public static Optional<GroupEntry> group(Variety variety, Handbook handbook) {
        return handbook.groups(variety.kind()).stream()
                .filter(entry -> entry.kind().equals(variety.kind()))
                .findFirst();
    }

    private static Suiting byKind(Variety variety, Handbook handbook) {
        Optional<Suits> suits =
                handbook.entry(variety.kind()).map(KindEntry::suits).filter(one -> one != Suits.NO_WORD);
        if (suits.isPresent()) {
            return of(standing(suits.get()), Basis.KIND);
        }
        boolean hasClasses = !handbook.groups(variety.kind()).isEmpty();
        return of(hasClasses ? Standing.NO_WORD : Standing.NO_CLASSES, Basis.NOTHING);
    }

    private static Standing standing(Suits suits) {
        return switch (suits) {
            case FIRST -> Standing.FIRST;
            case WELL -> Standing.WELL;
            case TALL -> Standing.TALL;
            case NO_WORD -> Standing.NO_WORD;
        };
    }
}
