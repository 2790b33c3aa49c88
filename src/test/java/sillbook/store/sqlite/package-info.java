// SPDX-License-Identifier: Apache-2.0
/** Journals as real files: the contract, what is refused, what is damaged, who may read, what survives a kill. */
@NullMarked
package sillbook.store.sqlite;

import org.jspecify.annotations.NullMarked;
