// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.zip.InflaterInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Logged;
import sillbook.model.Place;
import sillbook.store.Delivery;
import sillbook.store.ListFeed;
import sillbook.store.Progress;
import sillbook.store.Store;
import sillbook.store.StoreException;

class PackedTest {
    private static final Place CELLAR = Place.of(new Id<>(2, 1), "cellar", Place.Sort.CELLAR);

    @TempDir
    private Path folder;

    private static byte[] unpacked(List<byte[]> pieces) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] piece : pieces) {
            all.write(piece);
        }
        return new InflaterInputStream(new ByteArrayInputStream(all.toByteArray())).readAllBytes();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 262_144, 1_000_000})
    void givesTheBytesBack(int length) throws IOException {
        byte[] bytes = new byte[length];
        new Random(length).nextBytes(bytes);

        assertThat(unpacked(Packed.of(() -> new ByteArrayInputStream(bytes)).pieces()))
                .isEqualTo(bytes);
    }

    /** The sums are those that FIPS 180-4 gives for its examples. */
    @Test
    void hasTheSumOfTheBytes() throws IOException {
        byte[] abc = "abc".getBytes(StandardCharsets.US_ASCII);
        assertThat(Packed.of(() -> new ByteArrayInputStream(abc)).hash())
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void theOriginalIsKeptOnceBesideItsReadings() throws IOException {
        Path file = folder.resolve("journal.sillbook");
        byte[] bytes = "2026-11-02 00:00,5.0".getBytes(StandardCharsets.US_ASCII);
        List<Logged> readings = List.of(new Logged(Instant.parse("2026-11-02T00:00:00Z"), 5000, false));
        try (Store store = begun(file)) {
            store.takeIn(
                    store.revision(),
                    new Delivery(CELLAR.id(), "one.csv", () -> new ByteArrayInputStream(bytes), new ListFeed(readings)),
                    Progress.UNWATCHED,
                    Journals.NOW);
        }
        try (Database database = Database.open(file, Access.READ)) {
            List<byte[]> pieces = new ArrayList<>();
            database.each("SELECT bytes FROM original ORDER BY taken_in, position", row -> pieces.add(row.getBytes(1)));
            assertThat(unpacked(pieces)).isEqualTo(bytes);
        }
    }

    @Test
    void whatCannotBeReadIsNotTakenIn() {
        Path file = folder.resolve("journal.sillbook");
        try (Store store = begun(file)) {
            String before = store.dump();
            Delivery delivery = new Delivery(
                    CELLAR.id(),
                    "gone.csv",
                    () -> {
                        throw new IOException("gone");
                    },
                    new ListFeed(List.of(new Logged(Instant.EPOCH, 5000, false))));

            assertThatThrownBy(() -> store.takeIn(store.revision(), delivery, Progress.UNWATCHED, Journals.NOW))
                    .isInstanceOf(StoreException.class);
            assertThat(store.dump()).isEqualTo(before);
        }
    }

    private static Store begun(Path file) {
        return Journals.STORAGE.begin(file, Journal.of(List.of(Journals.EMPTY.settings(), CELLAR)));
    }
}
