// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import sillbook.model.Purchase.Money;
import sillbook.words.Prices;

/** A sum of money as JSON. */
final class MoneyJson {
    private MoneyJson() {}

    static Fields of(Money money) {
        return new Fields().number("sum", Prices.amount(money).doubleValue()).written("currency", money.currency());
    }
}
