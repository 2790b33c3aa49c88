// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.store.sqlite;

/** Harmless in itself. */
public record Cellar(String file) {}
