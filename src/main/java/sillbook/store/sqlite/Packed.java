// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.Deflater;
import sillbook.store.Original;

/**
 * Bytes as they are kept.
 *
 * @param hash SHA-256 of what they were, in hexadecimal digits
 * @param pieces what they are compressed to, one after the other
 */
record Packed(String hash, List<byte[]> pieces) {
    private static final int PIECE = 1 << 18;

    Packed {
        pieces = List.copyOf(pieces);
    }

    static Packed of(Original original) throws IOException {
        MessageDigest digest = sha256();
        Deflater deflater = new Deflater(Deflater.BEST_SPEED);
        try (InputStream in = original.open()) {
            List<byte[]> pieces = new ArrayList<>();
            byte[] piece = new byte[PIECE];
            for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
                digest.update(piece, 0, read);
                deflater.setInput(piece, 0, read);
                deflate(deflater, pieces);
            }
            deflater.finish();
            deflate(deflater, pieces);
            return new Packed(HexFormat.of().formatHex(digest.digest()), pieces);
        } finally {
            deflater.end();
        }
    }

    private static void deflate(Deflater deflater, List<byte[]> pieces) {
        byte[] piece = new byte[PIECE];
        for (int length = deflater.deflate(piece); length > 0; length = deflater.deflate(piece)) {
            pieces.add(Arrays.copyOf(piece, length));
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
