// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.SplittableRandom;
import sillbook.store.Feed;

/** Readings of a cellar that wanders between -2 and 14 C, at even steps of time. */
final class InventedReadings implements Feed {
    private static final int LEAST = -2_000;
    private static final int MOST = 14_000;
    private static final int STEP = 60;
    private static final DateTimeFormatter AS_LOGGED = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

    private final SplittableRandom random = new SplittableRandom(5);
    private final long first;
    private final int seconds;
    private final int count;
    private int line;
    private int milli = 6_000;

    InventedReadings(Instant first, int seconds, int count) {
        this.first = first.getEpochSecond();
        this.seconds = seconds;
        this.count = count;
    }

    /** As a logger would write them, with a heading. */
    static void write(Path file, InventedReadings readings) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("time,temperature C\n");
            while (readings.advance()) {
                String at = AS_LOGGED.format(LocalDateTime.ofEpochSecond(readings.at(), 0, ZoneOffset.UTC));
                out.write(String.format(Locale.ROOT, "%s,%.2f%n", at, readings.milli() / 1000.0));
            }
        }
    }

    @Override
    public boolean advance() {
        line++;
        milli = Math.max(LEAST, Math.min(MOST, milli + random.nextInt(-STEP, STEP + 1)));
        return line <= count;
    }

    @Override
    public long at() {
        return first + (long) seconds * (line - 1);
    }

    @Override
    public int milli() {
        return milli;
    }

    @Override
    public int line() {
        return line;
    }

    @Override
    public boolean isSuspicious() {
        return false;
    }
}
