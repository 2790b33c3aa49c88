// SPDX-License-Identifier: Apache-2.0
/**
 * From wishes to a season: which pots could be made, when each would be potted, brought in and in flower, where it would stand, and what is
 * to be ordered for it.
 *
 * <p>Values in, values out; today is handed in. It knows the journal and what is true of it, and no screens or sentences.
 */
@NullMarked
package sillbook.plan;

import org.jspecify.annotations.NullMarked;
