// SPDX-License-Identifier: Apache-2.0
/**
 * Everything that can be done to a journal, each as a value: what is meant, the edits it comes to, the name of the step.
 *
 * <p>A change is decided on a journal without touching anything; carrying it out is somebody else's work. It must not
 * know storage, screens, figures or the clock: today's day and new ids are handed in.
 */
@NullMarked
package sillbook.change;

import org.jspecify.annotations.NullMarked;
