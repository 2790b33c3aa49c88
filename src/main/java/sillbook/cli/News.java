// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

/** Tells on standard error how a search gets on; what was told last is not told again. */
final class News {
    private final Printer printer;
    private String told = "";

    News(Printer printer) {
        this.printer = printer;
    }

    void tell(String now) {
        if (!now.equals(told)) {
            told = now;
            printer.say(now);
        }
    }
}
