// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

/** The content as text: a line for each row, table by table in the order of the ids. */
final class Dump {
    private static final String READINGS = Sql.file("queries/dumped-readings.sql");

    private final Database database;
    private final StringBuilder lines = new StringBuilder();

    private Dump(Database database) {
        this.database = database;
    }

    static String of(Database database) {
        Dump dump = new Dump(database);
        for (Mapping<?> mapping : Mappings.ALL) {
            dump.add(mapping.table().name(), mapping.table().allAsJson("id"));
            mapping.parts().map(Parts::table).ifPresent(parts -> dump.add(parts.name(), parts.allAsJson("position")));
        }
        dump.add("reading", READINGS);
        return dump.lines.toString();
    }

    private void add(String name, String rows) {
        database.each(
                rows,
                result -> lines.append(name)
                        .append(' ')
                        .append(result.getString(1))
                        .append('\n'));
    }
}
