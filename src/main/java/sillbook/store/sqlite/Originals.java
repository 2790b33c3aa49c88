// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.io.IOException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import sillbook.store.Original;

/** The bytes that readings were taken in from, kept compressed, in pieces. */
final class Originals {
    private static final String ADD = "INSERT INTO original (taken_in, position, bytes) VALUES (?, ?, ?)";

    private final Database database;

    Originals(Database database) {
        this.database = database;
    }

    /** Begins to pack bytes while something else is done. */
    FutureTask<Packed> packing(Original original) {
        FutureTask<Packed> task = new FutureTask<>(() -> Packed.of(original));
        Thread thread = new Thread(task, "packing");
        thread.setDaemon(true);
        thread.start();
        return task;
    }

    /** Waits until the bytes are packed. */
    Packed await(FutureTask<Packed> packing) {
        try {
            return Intake.Stopped.orResult(packing);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof IOException unreadable) {
                throw Failures.of(database.file(), unreadable);
            }
            throw new IllegalStateException("packing came to nothing", e);
        }
    }

    void keep(long takenIn, Packed packed) {
        int position = 0;
        for (byte[] piece : packed.pieces()) {
            database.update(ADD, takenIn, position++, piece);
        }
    }
}
