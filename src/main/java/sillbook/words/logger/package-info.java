// SPDX-License-Identifier: Apache-2.0
/**
 * What the file of a thermometer was understood as and what it comes to, and how both are said: once for the command and the screen. Must not
 * know how a file is read, nor how readings are kept.
 */
@NullMarked
package sillbook.words.logger;

import org.jspecify.annotations.NullMarked;
