// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sillbook.exchange.ShelfJson;
import sillbook.exchange.StaysFile;
import sillbook.reckon.shelf.Headroom;
import sillbook.reckon.shelf.Shelf;
import sillbook.words.Provisos;
import sillbook.words.ShelfFigures;
import sillbook.words.StayFigures;

/** Works out how many pots stand on a shelf, or how much of it pots want that come and go, without a journal. */
@Command(
        name = "shelf",
        description = {
            "Work out how many round pots stand on a shelf; or how much of one pots want that come and go and keep"
                    + " their place.",
            "Bare numbers are cm; 24x16in is read too."
        })
final class ShelfCommand implements Callable<Integer> {
    private final Printer printer;
    private final InputStream in;
    private final List<String> assumed = new ArrayList<>();

    @Option(names = "--shelf", paramLabel = "WxH", description = "How wide and how deep it is.")
    private Optional<String> shelf = Optional.empty();

    @Option(names = "--pot", paramLabel = "D", description = "How wide a pot is outside, at its rim.")
    private Optional<String> pot = Optional.empty();

    @Option(names = "--height", paramLabel = "H", description = "What is clear over the shelf.")
    private Optional<String> height = Optional.empty();

    @Option(names = "--pot-height", paramLabel = "H", description = "How high a pot is; as high as wide if not said.")
    private Optional<String> potHeight = Optional.empty();

    @Option(names = "--shoot", paramLabel = "H", description = "How high the shoot is over the rim; 0 if not said.")
    private Optional<String> shoot = Optional.empty();

    @Option(
            names = "--stays",
            paramLabel = "FILE",
            description = "Pots as JSON, [{\"from\", \"to\", \"takes\"}], that leave on the day to; - reads the"
                    + " standard input.")
    private Optional<String> stays = Optional.empty();

    @Mixin
    private final JsonOption json = new JsonOption();

    ShelfCommand(Printer printer, InputStream in) {
        this.printer = printer;
        this.in = in;
    }

    @Override
    public Integer call() {
        if (stays.isPresent() == (shelf.isPresent() || pot.isPresent())) {
            throw new Misused("Write --shelf 60x40 and --pot 15, or --stays and a file: one of both.");
        }
        stays.ifPresentOrElse(this::overTime, this::sideBySide);
        return ExitCode.DONE;
    }

    private void overTime(String file) {
        FileIn given = new FileIn(file, in);
        StayFigures figures = StayFigures.of(given.told(given.heard(StaysFile::read, StaysFile::read)));
        new Sight(() -> ShelfJson.write(figures, Provisos.NONE), figures::lines, List.of(), "").show(json, printer);
    }

    private void sideBySide() {
        List<Double> sizes = Sizes.by(
                shelf.orElseThrow(() -> new Misused("It is not said how large the shelf is. Write --shelf 60x40.")),
                2,
                "shelf. Write how wide and how deep it is, --shelf 60x40.");
        double across = Sizes.above(
                pot.orElseThrow(() -> new Misused("It is not said how wide a pot is. Write --pot 15.")),
                "width of a pot");
        if (Math.max(sizes.get(0), sizes.get(1)) > Shelf.WIDEST * across) {
            throw new CouldNot(
                    "The shelf is more than 200 times as wide as a pot; so many are not counted. Measure both"
                            + " again.");
        }
        ShelfFigures figures =
                new ShelfFigures(new Shelf(sizes.get(0), sizes.get(1)).most(across), across, headroom(across));
        Provisos provisos = new Provisos(figures.warnings(), assumed);
        new Sight(() -> ShelfJson.write(figures, provisos), figures::lines, figures.warnings(), "").show(json, printer);
    }

    private Optional<Headroom> headroom(double across) {
        if (height.isEmpty() && (potHeight.isPresent() || shoot.isPresent())) {
            throw new Misused("Against which height? Write --height and what is clear over the shelf.");
        }
        return height.map(clear -> {
            if (potHeight.isEmpty()) {
                assumed.add("a pot as high as wide");
            }
            if (shoot.isEmpty()) {
                assumed.add("no shoot over the rim");
            }
            return new Headroom(
                    Sizes.above(clear, "height"),
                    potHeight.map(Sizes::length).orElse(across),
                    shoot.map(Sizes::length).orElse(0.0));
        });
    }
}
