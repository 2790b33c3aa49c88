// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.time.LocalDateTime;

/**
 * A step of the journal, which can be taken back or, if it was, put back.
 *
 * @param at when it was first carried out, in the journal's zone
 */
public record TakenStep(String name, LocalDateTime at, boolean isTakenBack) {}
