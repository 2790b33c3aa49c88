// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import sillbook.words.logger.Understood.Form;

/**
 * In which columns the instants stand.
 *
 * @param date the column of the date, or of all of it, counted from 0
 * @param time the column of the time of day; the same where both stand together
 */
record Instants(Form form, int date, int time) {

    static Instants together(int column) {
        return new Instants(Form.TOGETHER, column, column);
    }

    static Instants apart(int date, int time) {
        return new Instants(Form.APART, date, time);
    }

    static Instants unix(int column) {
        return new Instants(Form.UNIX, column, column);
    }

    boolean has(int column) {
        return column == date || column == time;
    }

    /** Reads the instant of a line; false where it has none. */
    boolean read(Cells cells, Moment moment) {
        if (Math.max(date, time) >= cells.count()) {
            return false;
        }
        byte[] bytes = cells.bytes();
        return switch (form) {
            case TOGETHER -> moment.readBoth(bytes, cells.from(date), cells.to(date));
            case UNIX -> moment.readUnix(bytes, cells.from(date), cells.to(date));
            case APART ->
                moment.readDate(bytes, cells.from(date), cells.to(date))
                        && moment.readTime(bytes, cells.from(time), cells.to(time));
        };
    }
}
