// SPDX-License-Identifier: Apache-2.0
/**
 * The shell around the screens: bytes from the terminal become keys, cells become bytes, effects are carried out, and whatever happens
 * the terminal is given back as it was found. The only place with the terminal library. Must not know what any screen shows.
 */
@NullMarked
package sillbook.ui.terminal;

import org.jspecify.annotations.NullMarked;
