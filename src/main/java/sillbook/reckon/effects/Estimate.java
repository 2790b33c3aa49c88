// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

/**
 * A figure with its doubt.
 *
 * @param sd the root of the prediction error variance
 */
public record Estimate(double value, double sd) {}
