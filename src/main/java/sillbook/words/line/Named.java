// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

/** Something called by its name: in the journal already, or to be written down with this line. */
record Named<T>(T thing, boolean isNew) {}
