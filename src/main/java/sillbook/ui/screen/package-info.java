// SPDX-License-Identifier: Apache-2.0
/**
 * The full screen as values: a state, messages that change it, effects it asks for, and a picture of it. Pages and what lies over them
 * live in packages below; {@code contents} binds them together.
 *
 * <p>Pure. Must not know the clock, storage, any terminal or when an effect is carried out: what comes of it arrives as a message.
 */
@NullMarked
package sillbook.ui.screen;

import org.jspecify.annotations.NullMarked;
