// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/** In which order a date's numbers stand. */
public enum DateOrder {
    DAY_MONTH_YEAR,
    MONTH_DAY_YEAR,
    YEAR_MONTH_DAY
}
