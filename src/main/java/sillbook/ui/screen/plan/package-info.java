// SPDX-License-Identifier: Apache-2.0
/**
 * The page of the plan: what should flower when, by a hand rule or as a ribbon under the months. It must not work a plan out itself; what it
 * changes by hand is a value until it is kept.
 */
@NullMarked
package sillbook.ui.screen.plan;

import org.jspecify.annotations.NullMarked;
