// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.util.Optional;

/**
 * An entry as the log of steps keeps it.
 *
 * @param row its row as a JSON array; empty when it is not there
 * @param parts the rows of its parts as an array of such arrays; empty when it is of a type without parts
 */
record Image(Optional<String> row, Optional<String> parts) {}
