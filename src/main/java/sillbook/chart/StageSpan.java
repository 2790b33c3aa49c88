// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

/** The days a pot spends in one stage. */
public record StageSpan(PotStage stage, Days days) {}
