// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.nio.file.Path;
import java.util.List;

/** A copy of an open journal, checked before it gets its name. */
final class Copy {
    private Copy() {}

    /** Writes the copy to a draft, and looks through it from the first page to the last. */
    static void write(Database journal, Path draft) {
        long least = journal.number("SELECT revision FROM book");
        journal.update("VACUUM INTO ?", draft.toString());
        try (Database copy = Database.open(draft, Access.LOOK)) {
            List<String> findings = Verification.ofFile(copy);
            if (!findings.isEmpty() || copy.number("SELECT revision FROM book") < least) {
                throw Failures.damaged(
                        journal.file(), "a copy of it came out wrong: " + String.join(" ", findings), null);
            }
        }
    }
}
