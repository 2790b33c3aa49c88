// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assumptions;

/** A disk of 512 KiB in memory, mounted on a folder for the length of a test. Only root may do that. */
record SmallDisk(Path folder) implements AutoCloseable {
    static SmallDisk on(Path folder) {
        boolean mounted = run("mount", "-t", "tmpfs", "-o", "size=512k,mode=700", "sillbook-test", folder.toString());
        Assumptions.assumeTrue(mounted, "mounting a small disk needs root");
        return new SmallDisk(folder);
    }

    void makeReadOnly() {
        if (!run("mount", "-o", "remount,ro", folder.toString())) {
            throw new IllegalStateException("cannot be made read-only: " + folder);
        }
    }

    @Override
    public void close() {
        run("umount", folder.toString());
    }

    private static boolean run(String... command) {
        try {
            return new ProcessBuilder(List.of(command))
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException noSuchCommand) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
