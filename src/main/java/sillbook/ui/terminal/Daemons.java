// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.util.concurrent.ThreadFactory;

/** Threads that do not keep the program alive. */
final class Daemons {
    private Daemons() {}

    static ThreadFactory named(String name) {
        return task -> {
            Thread thread = new Thread(task, "sillbook " + name);
            thread.setDaemon(true);
            return thread;
        };
    }
}
