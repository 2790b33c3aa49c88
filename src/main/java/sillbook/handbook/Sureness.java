// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

/** How well a figure is borne out: by how many sources, how good they are, and how far they agree. */
public enum Sureness {
    STRONG,
    GOOD,
    FAIR,
    WEAK
}
