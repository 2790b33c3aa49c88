// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where the bytes of a thermometer's file come from. They are gone through more than once, and must stay the same. */
@FunctionalInterface
public interface Source {
    /** From the first byte again. */
    InputStream open() throws IOException;

    static Source of(Path file) {
        return () -> Files.newInputStream(file);
    }

    static Source of(byte[] bytes) {
        byte[] kept = bytes.clone();
        return () -> new ByteArrayInputStream(kept);
    }
}
