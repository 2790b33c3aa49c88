// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.LocalDate;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Works out the days of a pot without a journal. */
@Command(
        name = "dates",
        description = {
            "Work out when the stages of a pot begin: forward from its potting, backward from a wished day.",
            "At least one day is wanted; with a start and a wish, the wish is judged. N is weeks, L,T,H the least, the"
                    + " usual and the most. What is not given is the handbook's."
        })
final class DatesCommand implements Callable<Integer> {
    private final Printer printer;
    private final Supplier<LocalDate> today;

    @Mixin
    private final DatesOptions options = new DatesOptions();

    @Mixin
    private final JsonOption json = new JsonOption();

    DatesCommand(Printer printer, Supplier<LocalDate> today) {
        this.printer = printer;
        this.today = today;
    }

    @Override
    public Integer call() {
        DatesReckoned.of(options, today.get()).sight().show(json, printer);
        return ExitCode.DONE;
    }
}
