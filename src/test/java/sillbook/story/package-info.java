// SPDX-License-Identifier: Apache-2.0
/**
 * Stories: the packaged program as its user meets it, in a real terminal. Each is named {@code ...IT}, runs after the program is
 * laid, and finds it at the path in the system property {@code sillbook.program}. A story knows keys and lines of text, and no
 * class of the program.
 */
@NullMarked
package sillbook.story;

import org.jspecify.annotations.NullMarked;
