// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import sillbook.model.Purchase.Money;
import sillbook.text.Fold;

/** Sums of money, in the grower's usual currency or with its code (ISO 4217) written. */
public final class Prices {
    private static final int USUAL_DECIMALS = 2;
    private static final String CURRENCY = "([a-z]{3}|€|£|\\$)";
    private static final Pattern BEFORE = Pattern.compile(CURRENCY + " ?(\\d{1,9}(?:[.,]\\d{1,4})?)");
    private static final Pattern AFTER = Pattern.compile("()(\\d{1,9}(?:[.,]\\d{1,4})?) ?" + CURRENCY + "?");

    private Prices() {}

    /** {@code 9.50}, {@code 9,50}, {@code EUR 9.50}, {@code 9.50 gbp}. */
    public static Heard<Money> parse(String text) {
        String said = Fold.of(text).strip();
        return Groups.of(BEFORE, said)
                .map(sum -> of(sum.text(2), sum.text(1)))
                .or(() -> Groups.of(AFTER, said).map(sum -> of(sum.text(2), sum.text(3))))
                .orElseGet(() -> Heard.not(
                        "a price, as 9.50", "'" + text.strip() + "' is no price. Write it as 9.50 or EUR 9.50."));
    }

    private static Heard<Money> of(String number, String symbol) {
        return switch (symbol) {
            case "" -> sum(number, "", USUAL_DECIMALS);
            case "€" -> of(number, "EUR");
            case "£" -> of(number, "GBP");
            case "$" ->
                Heard.not("which dollars?", "$ stands for more than one currency. Write its code, as USD 9.50.");
            default ->
                currency(symbol)
                        .map(code -> sum(number, code.getCurrencyCode(), decimals(code)))
                        .orElseGet(() -> Heard.not(
                                "no currency",
                                "'" + symbol + "' is no currency. Write its code of three letters, as EUR, or none."));
        };
    }

    private static Optional<Currency> currency(String code) {
        try {
            return Optional.of(Currency.getInstance(code.toUpperCase(Locale.ROOT)));
        } catch (IllegalArgumentException unknown) {
            return Optional.empty();
        }
    }

    private static int decimals(Currency currency) {
        return Math.max(0, currency.getDefaultFractionDigits());
    }

    private static Heard<Money> sum(String number, String code, int decimals) {
        BigDecimal amount = Decimal.parse(number);
        if (amount.stripTrailingZeros().scale() > decimals) {
            return Heard.not(
                    "too many decimals", "'" + number + "' has more decimals than the coin. Write it as 9.50.");
        }
        BigDecimal minor = amount.movePointRight(decimals).setScale(0, RoundingMode.UNNECESSARY);
        return Heard.as(new Money(minor.longValueExact(), code));
    }

    /** {@code 9.50}, {@code EUR 9.50}. */
    public static String say(Money money) {
        String number = amount(money).toPlainString();
        return money.currency().isEmpty() ? number : money.currency() + " " + number;
    }

    /** The sum alone, with the decimals of its currency. */
    public static BigDecimal amount(Money money) {
        int decimals = currency(money.currency()).map(Prices::decimals).orElse(USUAL_DECIMALS);
        return BigDecimal.valueOf(money.minor(), decimals);
    }
}
