// SPDX-License-Identifier: Apache-2.0
/**
 * The demo: the lines and the thermometers' files of an invented grower, written into a journal day by day. Must not know where that journal is
 * kept.
 */
@NullMarked
package sillbook.app.demo;

import org.jspecify.annotations.NullMarked;
