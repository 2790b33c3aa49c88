// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.season;

interface LeansOnTheLanguage {
    default String inWeeks(double weeks) {
        return String.format("%.1f weeks", weeks);
    }
}
