// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.zip.Deflater;
import java.util.zip.DeflaterInputStream;
import sillbook.store.Original;

/** The bytes that readings were taken in from, kept compressed, in pieces. */
final class Originals {
    private static final String ADD = "INSERT INTO original (taken_in, position, bytes) VALUES (?, ?, ?)";
    private static final int PIECE = 1 << 18;

    private final Database database;

    Originals(Database database) {
        this.database = database;
    }

    /** SHA-256 in hexadecimal digits. */
    String hash(Original original) {
        try (InputStream in = original.open()) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] piece = new byte[PIECE];
            for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
                digest.update(piece, 0, read);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (IOException e) {
            throw Failures.of(database.file(), e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    void keep(long takenIn, Original original) {
        Deflater fast = new Deflater(Deflater.BEST_SPEED);
        try (InputStream in = new DeflaterInputStream(original.open(), fast, PIECE)) {
            byte[] piece = in.readNBytes(PIECE);
            for (int position = 0; piece.length > 0; position++) {
                database.update(ADD, takenIn, position, piece);
                piece = in.readNBytes(PIECE);
            }
        } catch (IOException e) {
            throw Failures.of(database.file(), e);
        } finally {
            fast.end();
        }
    }
}
