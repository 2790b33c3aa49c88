// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sillbook.model.Purchase.Money;

/** Money added up, each currency for itself. */
final class Sums {
    private Sums() {}

    static List<Money> of(List<Money> some) {
        Map<String, Long> sums = new LinkedHashMap<>();
        some.forEach(money -> sums.merge(money.currency(), money.minor(), Long::sum));
        return sums.entrySet().stream()
                .map(sum -> new Money(sum.getValue(), sum.getKey()))
                .toList();
    }
}
