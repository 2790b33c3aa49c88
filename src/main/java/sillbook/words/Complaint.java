// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

/**
 * Why a text was not understood.
 *
 * @param brief a few words to stand beside a field: {@code November has 30 days}
 * @param sentence what, what was expected, what to do: {@code 31 nov is no day: November has 30 days. Write another, as
 *     30 nov or +10.}
 */
public record Complaint(String brief, String sentence) {}
