// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

/**
 * What one level of a factor does.
 *
 * @param records their weights added up
 * @param effect of the level alone, from the mean of its like
 * @param score of a record with this level (and what it belongs to), all else being average
 * @param eighty holds the true score of the level 8 times in 10
 */
public record LevelEffect(String level, double records, Estimate effect, Estimate score, Interval eighty) {}
