// SPDX-License-Identifier: Apache-2.0
/**
 * The commands: one class each, plain lines or JSON on the standard output, words about the work on the standard error
 * output, and one small table of exit codes. {@link sillbook.cli.Commands} is the door.
 *
 * <p>It says nothing of its own about a season: the figures come from {@code season}, the sentences from {@code words},
 * the JSON from {@code exchange}. It must not know how a journal is kept, nor anything of the screens.
 */
@NullMarked
package sillbook.cli;

import org.jspecify.annotations.NullMarked;
