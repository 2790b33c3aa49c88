// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.util.ArrayList;
import java.util.List;
import sillbook.store.StoreException;

/** Looks for what is wrong with a journal; each finding is a sentence. */
final class Verification {
    private static final String CHECKS = Sql.file("queries/checks.sql");
    private static final String QUICK = Sql.file("queries/quick-checks.sql");

    private Verification() {}

    /** The whole of it: the file, the references, what the journal says, and whether each entry can be read. */
    static List<String> of(Database database) {
        List<String> findings = new ArrayList<>();
        try {
            findings.addAll(ofFile(database));
            findings.addAll(ofReferences(database));
            findings.addAll(database.list(CHECKS, Row::text));
            new Content(database).read(Scope.ALL);
        } catch (StoreException failure) {
            findings.add(failure.sentence());
        }
        return findings;
    }

    /**
     * Whether the pages of the file, its indexes and the values in its columns are as they must be. Over a connection
     * that only reads, SQLite leaves the CHECKs of the columns out of it.
     */
    static List<String> ofFile(Database database) {
        return sentences(database.list("PRAGMA integrity_check", Row::text));
    }

    /** The same of what every start reads, without the indexes. */
    static List<String> ofFileQuickly(Database database) {
        return sentences(database.list(QUICK, Row::text, false));
    }

    /** The same of readings and the files they are from, which take a hundred times as long. */
    static List<String> ofReadingsQuickly(Database database) {
        return sentences(database.list(QUICK, Row::text, true));
    }

    private static List<String> sentences(List<String> results) {
        return results.stream()
                .filter(result -> !result.equals("ok"))
                .map(result -> "The file is damaged: " + result + ".")
                .toList();
    }

    static List<String> ofReferences(Database database) {
        return database.list("PRAGMA foreign_key_check", row -> {
            String table = row.text();
            row.optionalNumber();
            return "An entry of " + table + " names one of " + row.text() + " that is not there.";
        });
    }
}
