// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

/** What was asked for has no meaning, or is more than a search takes on; the message says what, as part of a sentence. */
public final class Unreckonable extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    Unreckonable(String what) {
        super(what);
    }
}
