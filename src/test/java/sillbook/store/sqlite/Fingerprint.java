// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The files of a folder and what is in them. */
record Fingerprint(Map<String, String> files) {
    static Fingerprint of(Path folder) {
        try (Stream<Path> paths = Files.walk(folder)) {
            Map<String, String> files = new TreeMap<>();
            paths.filter(Files::isRegularFile)
                    .forEach(path -> files.put(folder.relativize(path).toString(), hash(path)));
            return new Fingerprint(files);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String hash(Path path) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(path));
            return HexFormat.of().formatHex(digest);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
