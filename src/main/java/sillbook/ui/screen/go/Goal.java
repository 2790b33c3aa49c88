// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.go;

import java.util.function.UnaryOperator;
import sillbook.ui.screen.State;

/**
 * Something to go to.
 *
 * @param name what it is found by
 * @param beside what is said of it in the list
 * @param opens the state with it open
 */
record Goal(String name, String beside, UnaryOperator<State> opens) {}
