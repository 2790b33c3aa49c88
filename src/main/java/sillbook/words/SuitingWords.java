// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import java.util.Optional;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.GroupEntry;
import sillbook.handbook.Handbook;
import sillbook.handbook.Origin;
import sillbook.handbook.Source;
import sillbook.model.OwnFigure.Range;
import sillbook.model.Settings;
import sillbook.model.Variety;
import sillbook.model.Variety.PacketForcing;
import sillbook.season.Suiting;
import sillbook.season.Suiting.Basis;
import sillbook.season.Suiting.Standing;

/** How varieties suit pots, as it is said. */
public record SuitingWords(Handbook handbook, Settings settings) {
    /** In a word or three, as JSON has it too. */
    public static final Vocabulary<Standing> STANDINGS = Vocabulary.<Standing>of("standing in pots")
            .with(Standing.FIRST, "first")
            .with(Standing.WELL, "well")
            .with(Standing.NO_CLASSES, "kind without classes")
            .with(Standing.NO_WORD, "nothing published")
            .with(Standing.TALL, "tall")
            .with(Standing.UNSUITED, "not for pots");

    /** Over those of one standing. */
    public static String heading(Standing standing) {
        return switch (standing) {
            case FIRST -> "Suit pots";
            case WELL -> "Suit pots too";
            case NO_CLASSES -> "Kinds without classes";
            case NO_WORD -> "Nothing published of the class";
            case TALL -> "Tall for a pot";
            case UNSUITED -> "Not for pots, by the packet or your mark";
        };
    }

    /** What says how it stands: {@code Triumph suits pots (▫).} Empty where nothing does. */
    public Optional<String> why(Variety variety, Suiting suiting) {
        return switch (suiting.basis()) {
            case OWN_MARK ->
                Optional.of("Your mark: " + Terms.FOR_POTS.say(variety.forPots()) + " ("
                        + OriginMarks.mark(Origin.OWN_FOR_VARIETY) + ").");
            case PACKET -> Optional.of("Its packet says not to force it.");
            case HEIGHT -> suiting.limit().map(limit -> height(variety, suiting.standing(), limit));
            case CLASS -> Suiting.group(variety, handbook).map(group -> ofClass(group, suiting.standing()));
            case KIND ->
                handbook.entry(variety.kind())
                        .map(kind -> "Nearly all " + kind.plural() + " suit pots"
                                + OriginMarks.after(List.of(Source.COMMON_PRACTICE)) + ".");
            case NOTHING -> Optional.empty();
        };
    }

    /** What the packet says of it, where that is not the reason already. */
    public static Optional<String> byPacket(Variety variety, Suiting suiting) {
        if (suiting.basis() == Basis.PACKET || variety.packetForcing() == PacketForcing.NOT_STATED) {
            return Optional.empty();
        }
        return Optional.of(
                variety.packetForcing() == PacketForcing.YES
                        ? "Its packet says it can be forced."
                        : "Its packet says not to force it.");
    }

    private String height(Variety variety, Standing standing, FigureInForce limit) {
        String tall = variety.height()
                .map(height -> Lengths.say(height, settings.lengths()))
                .orElse("");
        String most = FigureValues.say(limit.name(), Range.of(limit.range().typical()), settings);
        String by = OriginMarks.after(limit);
        return standing == Standing.TALL
                ? tall + ": tall for small pots, over " + most + by + "; not banned."
                : tall + ": short enough for small pots, to " + most + by + ".";
    }

    private static String ofClass(GroupEntry group, Standing standing) {
        String says = switch (standing) {
            case WELL -> " suits pots too";
            case TALL -> " has long stems for a pot";
            default -> " suits pots";
        };
        return group.name() + says + OriginMarks.after(group.sources()) + ".";
    }
}
