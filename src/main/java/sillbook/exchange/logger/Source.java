// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import sillbook.store.Original;

/** Where the bytes of a thermometer's file come from. They are gone through more than once, and must stay the same. */
@FunctionalInterface
public interface Source extends Original {
    static Source of(Path file) {
        return () -> Files.newInputStream(file);
    }

    static Source of(byte[] bytes) {
        byte[] kept = bytes.clone();
        return () -> new ByteArrayInputStream(kept);
    }
}
