// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

/** Where a group of actions belongs; the headings of the table of keys. */
public enum Where {
    EVERYWHERE("Everywhere"),
    POTS("Pots, wherever they are"),
    VARIETIES("Varieties, wherever they are"),
    LISTS("In lists"),
    FIELDS("In fields and forms"),
    TODAY("On Today"),
    POTS_PAGE("On Pots"),
    CARD("On a pot's card"),
    ROUND("In a round"),
    FAILED("On what went wrong"),
    PLACES("On Places"),
    BULBS("On Bulbs"),
    SEASONS("On Seasons"),
    CHOOSING("On Choosing"),
    PLAN("On the Plan"),
    DIARY("In the Diary"),
    IMPORT("On a thermometer's file"),
    SLIPS("In slips"),
    HELP("In these keys"),
    FIRST_RUN("Before a journal is open");

    private final String heading;

    Where(String heading) {
        this.heading = heading;
    }

    public String heading() {
        return heading;
    }

    /** The heading inside a sentence: {@code on Today}. */
    public String place() {
        String first = Character.toString(Character.toLowerCase(heading.codePointAt(0)));
        return heading.replaceFirst("^.", first);
    }
}
