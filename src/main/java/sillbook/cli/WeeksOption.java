// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import sillbook.cli.DayOption.WrongOption;
import sillbook.model.OwnFigure.Range;
import sillbook.words.Weeks;

/** Weeks given as an option: one number, or the least, the usual and the most. */
final class WeeksOption {
    private WeeksOption() {}

    static double one(String text) {
        return Weeks.parse(text).fold(weeks -> weeks, not -> {
            throw new WrongOption(not.sentence());
        });
    }

    static Range range(String text) {
        List<Double> weeks = new ArrayList<>();
        for (String part : text.split(",", -1)) {
            weeks.add(one(part));
        }
        boolean isOne = weeks.size() == 1;
        if (!isOne && weeks.size() != 3) {
            throw new WrongOption("'" + text + "' is neither one number of weeks nor three. Write 15, or 12,15,17.");
        }
        double low = weeks.get(0);
        double typical = isOne ? low : weeks.get(1);
        double high = isOne ? low : weeks.get(2);
        if (!(low <= typical && typical <= high)) {
            throw new WrongOption("'" + text + "' is not in order. Write the least, the usual and the most weeks.");
        }
        return new Range(low, typical, high);
    }

    /** {@code 15}, {@code 2.5}: without zeros nobody needs. */
    static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
