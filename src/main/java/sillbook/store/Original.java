// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.io.IOException;
import java.io.InputStream;

/** The bytes of a source, as it has them; it is kept beside what was read from it. */
@FunctionalInterface
public interface Original {
    /** Opens them from the beginning; they are the same each time. */
    InputStream open() throws IOException;
}
