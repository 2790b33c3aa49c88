// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.season;

/** Harmless in itself. */
public record Standing(int weeks) {}
