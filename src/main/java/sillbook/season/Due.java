// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;

/** How a job stands on a day. */
public enum Due {
    /** A use-by day or a dated wish is in danger. */
    LATE,
    /** It can be done, and may wait. */
    READY,
    /** It is for today. */
    TODAY,
    /** It comes within the next 14 days. */
    SOON,
    LATER;

    /** Of something that falls due on a day and has no more to it. */
    static Due on(LocalDate day, LocalDate today) {
        if (!day.isAfter(today)) {
            return TODAY;
        }
        return day.isAfter(today.plusDays(Today.SOON_DAYS)) ? LATER : SOON;
    }
}
