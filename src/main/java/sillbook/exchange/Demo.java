// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.SplittableRandom;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Settings;

/**
 * The demo: an invented grower's journal over three finished winters and a fourth in full swing. Its lines lie in the
 * folder {@code demo} of the source, one file a winter; here they are written into a journal, always the same to the
 * last id.
 */
public final class Demo {
    /** The moment it is seen at, a morning in the middle of its fourth winter. */
    public static final Instant MOMENT = Instant.parse("2027-01-12T09:00:00Z");

    /** Where its grower lives, as far as clocks are concerned. */
    public static final ZoneId ZONE = ZoneId.of("UTC");

    /** The day it is then. */
    public static final LocalDate DAY = LocalDate.ofInstant(MOMENT, ZONE);

    private static final List<String> WINTERS = List.of("2023-24.txt", "2024-25.txt", "2025-26.txt", "2026-27.txt");
    private static final long SEED = 20270112;

    private Demo() {}

    /**
     * The demo as it is at {@link #MOMENT}.
     *
     * @param kept the windows that were foretold whenever a pot was potted or moved, on that day and from what was written by then
     */
    public record Told(Journal journal, List<KeptWindow> kept) {
        public Told {
            kept = List.copyOf(kept);
        }
    }

    /** Writes all of it. */
    public static Told told() {
        Replay replay = new Replay(Journal.empty(Settings.initial(ZONE)), ids());
        WINTERS.forEach(name -> replay.write(DatedLines.parse("demo/" + name, text(name))));
        return new Told(replay.journal(), replay.kept());
    }

    /** What the journal says at {@link #MOMENT}. */
    public static Journal journal() {
        return told().journal();
    }

    private static Ids ids() {
        return new SplittableRandom(SEED)::nextLong;
    }

    private static String text(String name) {
        try (InputStream in = Demo.class.getResourceAsStream("demo/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file demo/" + name);
            }
            return new String(in.readAllBytes(), UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException("could not read the program's file demo/" + name, failure);
        }
    }
}
