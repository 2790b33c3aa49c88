// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

/**
 * A warning as it is given out.
 *
 * @param code a short name that stays the same, for programs: {@code too-little-cold}
 * @param says a sentence
 */
public record Warned(String code, String says) {}
