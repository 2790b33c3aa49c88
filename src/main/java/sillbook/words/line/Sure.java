// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

/** How surely words are meant so; the surer first. */
enum Sure {
    /** They are a whole name, or can be nothing else. */
    WHOLE,
    /** They begin one name, and no other. */
    BEGINNING,
    /** They begin more than one name; the likeliest is taken for the time being. */
    OPEN,
    /** They stand where something new is named. */
    NEW
}
