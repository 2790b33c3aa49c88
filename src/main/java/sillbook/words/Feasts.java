// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.reckon.dates.Feast;

/** The feasts a wish can be written as. */
public final class Feasts {
    public static final Vocabulary<Feast> ALL = Vocabulary.<Feast>of("feast")
            .with(Feast.EPIPHANY, "Epiphany", "twelfth day", "three kings")
            .with(Feast.ORTHODOX_CHRISTMAS, "Orthodox Christmas")
            .with(Feast.CANDLEMAS, "Candlemas")
            .with(Feast.VALENTINES_DAY, "Valentine's Day", "valentine", "valentines", "valentines day")
            .with(Feast.WOMENS_DAY, "Women's Day", "womens day")
            .with(Feast.ASH_WEDNESDAY, "Ash Wednesday")
            .with(Feast.MOTHERING_SUNDAY, "Mothering Sunday")
            .with(Feast.PALM_SUNDAY, "Palm Sunday")
            .with(Feast.GOOD_FRIDAY, "Good Friday")
            .with(Feast.EASTER, "Easter", "easter sunday")
            .with(Feast.ORTHODOX_EASTER, "Orthodox Easter")
            .with(Feast.MOTHERS_DAY, "Mother's Day", "mothers day")
            .with(Feast.WHIT_SUNDAY, "Whit Sunday", "whitsun", "pentecost")
            .with(Feast.ADVENT_SUNDAY, "Advent Sunday", "advent", "first advent")
            .with(Feast.CHRISTMAS, "Christmas", "xmas", "christmas day")
            .with(Feast.NEW_YEARS_EVE, "New Year's Eve", "new years eve");

    private Feasts() {}
}
