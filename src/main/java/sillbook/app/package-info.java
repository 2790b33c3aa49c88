// SPDX-License-Identifier: Apache-2.0
/**
 * What can be done with an open journal: one change is one transaction and one step that can be taken back.
 *
 * <p>Only this package asks the clock. It must not know how a journal is kept (that is behind {@link sillbook.store}),
 * nor how anything is shown.
 */
@NullMarked
package sillbook.app;

import org.jspecify.annotations.NullMarked;
