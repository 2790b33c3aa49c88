// SPDX-License-Identifier: Apache-2.0
/** The program: {@link sillbook.Main} wires the packages below together. It may know every one of them. */
@NullMarked
package sillbook;

import org.jspecify.annotations.NullMarked;
