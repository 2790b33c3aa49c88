// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import java.util.List;
import java.util.Optional;
import sillbook.handbook.GroupEntry;
import sillbook.handbook.Handbook;
import sillbook.model.Variety;
import sillbook.model.Variety.PacketForcing;

/** How a variety suits pots: by its packet, and by what is published of its class. */
record Forcing(Handbook handbook, Variety variety) {

    /** Where it stands among the others, the best first. */
    enum Standing {
        SUITS("Suits pots"),
        NO_CLASSES("Kinds without classes"),
        NO_WORD("Nothing published of the class"),
        TALL("Long stems for a pot"),
        NOT_BY_PACKET("Not to be forced, by the packet");

        private final String heading;

        Standing(String heading) {
            this.heading = heading;
        }

        String heading() {
            return heading;
        }
    }

    Standing standing() {
        if (variety.packetForcing() == PacketForcing.NO) {
            return Standing.NOT_BY_PACKET;
        }
        return group().map(Forcing::standing).orElseGet(this::withoutClass);
    }

    private static Standing standing(GroupEntry group) {
        return switch (group.suits()) {
            case WELL -> Standing.SUITS;
            case TALL -> Standing.TALL;
            case NO_WORD -> Standing.NO_WORD;
        };
    }

    private Standing withoutClass() {
        return groups().isEmpty() ? Standing.NO_CLASSES : Standing.NO_WORD;
    }

    private List<GroupEntry> groups() {
        return handbook.groups(variety.kind());
    }

    private Optional<GroupEntry> group() {
        return groups().stream()
                .filter(entry -> entry.kind().equals(variety.kind()))
                .findFirst();
    }

    /** {@code Triumph suits pots (▫).}; empty where nothing is published of its class. */
    Optional<String> byClass() {
        return group().flatMap(Forcing::sentence);
    }

    private static Optional<String> sentence(GroupEntry group) {
        return switch (group.suits()) {
            case WELL -> Optional.of(group.name() + " suits pots (▫).");
            case TALL -> Optional.of(group.name() + " has long stems for a pot (▫).");
            case NO_WORD -> Optional.empty();
        };
    }

    /** Empty where its packet says nothing of it. */
    Optional<String> byPacket() {
        return switch (variety.packetForcing()) {
            case YES -> Optional.of("Its packet says it can be forced.");
            case NO -> Optional.of("Its packet says not to force it.");
            case NOT_STATED -> Optional.empty();
        };
    }
}
