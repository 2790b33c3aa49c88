// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import sillbook.handbook.Handbook;
import sillbook.model.Ids;

/**
 * What the screens are given besides the journal.
 *
 * @param contents the book's pages and the keys that hold everywhere
 * @param ids for what is new on the page: a variety or a place that a form makes
 */
public record Kit(Contents contents, Handbook handbook, Ids ids) {}
