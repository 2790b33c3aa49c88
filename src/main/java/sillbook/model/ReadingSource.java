// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.Instant;
import java.util.stream.Stream;

/**
 * Where readings of a place were taken in from. It says of its source what is so whenever it is taken in; the readings themselves are asked of
 * the store.
 *
 * @param name as it was called when it was taken in, the file's name
 * @param hash of its bytes: SHA-256 in hexadecimal digits
 * @param readings how many it has
 * @param suspicious how many of these can hardly be true
 * @param first when its earliest was read
 * @param last when its latest was read
 */
public record ReadingSource(
        Id<ReadingSource> id,
        Id<Place> place,
        String name,
        String hash,
        int readings,
        int suspicious,
        Instant first,
        Instant last)
        implements Entity<ReadingSource> {
    private static final int HALF = 16;

    public ReadingSource {
        if (first.isAfter(last) || suspicious > readings) {
            throw new IllegalArgumentException("no source: " + readings + " readings from " + first + " to " + last
                    + ", " + suspicious + " suspicious");
        }
    }

    /** The same bytes taken in for the same place are the same source, in whatever journal. */
    public static Id<ReadingSource> idOf(Id<Place> place, String hash) {
        return new Id<>(
                Long.parseUnsignedLong(hash, 0, HALF, HALF) ^ place.high(),
                Long.parseUnsignedLong(hash, HALF, 2 * HALF, HALF) ^ place.low());
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.of(place);
    }
}
