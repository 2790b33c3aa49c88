// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import sillbook.reckon.shelf.Headroom;
import sillbook.words.Provisos;
import sillbook.words.ShelfFigures;
import sillbook.words.StayFigures;

/** How many pots stand on a shelf, as JSON. */
public final class ShelfJson {
    private ShelfJson() {}

    /** The document of {@code sillbook reckon shelf --json} for like pots side by side. */
    public static String write(ShelfFigures shelf, Provisos provisos) {
        Fields fields = new Fields()
                .number("count", shelf.standing().count())
                .number("upperBound", shelf.standing().atMost())
                .flag("proven", shelf.standing().isProven())
                .text("pattern", shelf.pattern().replace(' ', '-'))
                .decimal("headroom", shelf.headroom().map(Headroom::left))
                .places("positions", shelf.standing().places());
        return Answer.write(fields, provisos);
    }

    /** The same for pots that come and go. */
    public static String write(StayFigures stays, Provisos provisos) {
        Fields fields = new Fields()
                .number("load", stays.stays().load())
                .number("places", stays.allocation().places())
                .number("atLeast", stays.allocation().atLeast())
                .flag("proven", stays.allocation().isProven())
                .numbers("offsets", stays.allocation().offsets());
        return Answer.write(fields, provisos);
    }
}
