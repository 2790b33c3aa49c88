// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/** Pots made together. A batch has no entry of its own: this type only marks the id that its pots share. */
public final class Batch {
    private Batch() {}
}
