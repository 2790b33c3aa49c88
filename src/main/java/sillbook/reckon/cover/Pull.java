// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.OptionalInt;

/**
 * A pot that is brought in.
 *
 * @param group whose pot it is, by its number in the {@link Task}
 * @param day on which it comes in
 * @param site where it stands from then to its last day in bloom
 * @param cold where it stood before; empty when it needed no room there
 */
public record Pull(int group, int day, int site, OptionalInt cold) {}
