// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

/**
 * A factor each of whose levels belongs to one level of another, as a variety to its kind. A level's mean then counts
 * in what it belongs to, and so does the difference of two.
 */
public record Nested(String factor, String within) {}
