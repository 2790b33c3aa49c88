// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

/** How a file is opened. */
enum Access {
    WRITE("mode=rw"),
    /** Reads, with regard to what other programs write meanwhile. */
    READ("mode=ro"),
    /** Reads a file that nobody writes; leaves no trace, not even beside it. */
    LOOK("immutable=1");

    private final String parameter;

    Access(String parameter) {
        this.parameter = parameter;
    }

    String parameter() {
        return parameter;
    }
}
