// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.time.LocalTime;

/** Times of day as they are written: {@code 08:40}. */
public final class Clock24 {
    private Clock24() {}

    public static String say(LocalTime time) {
        return twoDigits(time.getHour()) + ":" + twoDigits(time.getMinute());
    }

    private static String twoDigits(int number) {
        return number < 10 ? "0" + number : Integer.toString(number);
    }
}
