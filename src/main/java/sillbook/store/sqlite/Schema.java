// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.nio.file.Path;
import java.util.List;
import sillbook.store.Backups;
import sillbook.store.StoreException;

/**
 * The form of a journal, and how one of an earlier form is brought up to date: script by script, in a straight line.
 *
 * @param scripts the first makes an empty journal; each of the others leads from one form to the next
 */
record Schema(List<String> scripts) {
    /** "Sill" in ASCII: by this number a file is known as a journal. */
    static final int APPLICATION_ID = 0x53696C6C;

    static final Schema CURRENT = new Schema(List.of("001-journal.sql"));

    int version() {
        return scripts.size();
    }

    /**
     * The form of a file.
     *
     * @throws StoreException when it is not a journal, or of a form that only a later program knows
     */
    int versionOf(Database database) {
        if (database.number("PRAGMA application_id") != APPLICATION_ID) {
            throw new StoreException.Foreign(database.file());
        }
        int version = (int) database.number("PRAGMA user_version");
        if (version > version()) {
            throw new StoreException.Newer(database.file(), version, version());
        }
        return version;
    }

    /** Makes a journal of an empty file. */
    void create(Database database) {
        database.run("PRAGMA application_id = " + APPLICATION_ID);
        for (int version = 0; version < version(); version++) {
            lead(database, version);
        }
    }

    /** Brings a journal up to date, after a backup of it as it is. */
    void bringUpToDate(Database database) {
        int version = versionOf(database);
        Path backup = Backups.of(database.file()).ofForm(version);
        Draft.replace(backup, draft -> Copy.write(database, draft));
        try {
            for (; version < version(); version++) {
                lead(database, version);
            }
        } catch (StoreException failure) {
            throw new StoreException.NotBroughtUpToDate(database.file(), backup, failure);
        }
    }

    /** Leads from one form to the next, unless another window has done so. Tables may be rebuilt on the way. */
    private void lead(Database database, int version) {
        database.run("PRAGMA foreign_keys = OFF");
        database.transaction(() -> {
            if (versionOf(database) == version) {
                database.run(Sql.file(scripts.get(version)));
                requireReferences(database);
                database.run("PRAGMA user_version = " + (version + 1));
            }
            return version;
        });
        database.run("PRAGMA foreign_keys = ON");
    }

    private static void requireReferences(Database database) {
        List<String> findings = Verification.ofReferences(database);
        if (!findings.isEmpty()) {
            throw Failures.damaged(database.file(), String.join(" ", findings), null);
        }
    }
}
