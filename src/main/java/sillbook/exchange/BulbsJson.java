// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.model.Journal;
import sillbook.model.Variety;

/** Varieties as JSON. */
public final class BulbsJson {
    private BulbsJson() {}

    /** The document of {@code sillbook bulbs --json}. */
    public static String write(Journal journal) {
        List<Variety> varieties = journal.varieties().all().stream()
                .sorted(Comparator.comparing(Variety::name))
                .toList();
        return new Fields()
                .list("varieties", varieties, BulbsJson::variety)
                .texts("warnings", List.of())
                .texts("assumed", List.of())
                .write();
    }

    private static Fields variety(Variety variety) {
        return new Fields()
                .text("variety", variety.name())
                .text("kind", variety.kind().toString())
                .decimal("heightCm", variety.height().map(height -> height.centimetres()))
                .text("colour", known(variety.colour()))
                .code("scent", variety.scent())
                .code("packetForcing", variety.packetForcing())
                .text("note", known(variety.note()));
    }

    private static Optional<String> known(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
