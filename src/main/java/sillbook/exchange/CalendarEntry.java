// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;

/**
 * A coming job as a calendar has it.
 *
 * @param uid stays the same as long as it is that job of that pot, batch or place
 * @param says what is to be done to what, in a few words
 * @param more where to, and by when; may be empty
 */
public record CalendarEntry(String uid, LocalDate day, String says, String more) {}
