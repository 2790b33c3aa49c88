// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import sillbook.model.Journal;

/** What the journal said at a revision. */
public record Snapshot(long revision, Journal journal) {}
