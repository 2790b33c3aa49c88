// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.List;
import java.util.Optional;
import sillbook.model.Container;
import sillbook.model.Edit;
import sillbook.model.PottingMix;
import sillbook.model.Settings.LengthUnit;
import sillbook.ui.screen.form.Answers;
import sillbook.words.Lengths;
import sillbook.words.Mixes;
import sillbook.words.Terms;

/** Forms of what pots are made with: potting mixes and containers. */
final class StoreSheets {
    private static final Part NAME = Part.of("Name", 30, "", "What you call it, or the name on the bag.")
            .following()
            .wanted()
            .phrase();
    private static final Part RENAMED =
            Part.of("Name", 30, "called ", "What you call it.").phrase();
    private static final Part PARTS = Part.of("Parts", 50, "", "By volume: 2 loam, 1 peat, 1 sand. Empty for a bag.");
    private static final Part SHAPE = Part.of("Shape", 16, "", "Standard, azalea, pan, bowl, glass or outer pot.");
    private static final Part ACROSS = Part.of("Across", 10, "", "Its inside width at bulb depth: 15 cm, 6in.");
    private static final Part HEIGHT =
            Part.of("Height", 10, "", "Its height: 12 cm.").with(" high");
    private static final Part STOCK =
            Part.of("How many", 6, "", "How many there are.").with(" of them");
    private static final Part UNWASHED = Part.of("Unwashed", 6, "", "How many of those not in use want washing.")
            .with(" unwashed");
    private static final Part NOTE = Part.of("Note", 50, "note ", "In your own words, as long as you like.");

    private StoreSheets() {}

    static LineSheet pottingMix() {
        return LineSheet.of("New potting mix", "new potting mix", "mix", List.of(NAME, PARTS, NOTE));
    }

    static LineSheet correct(PottingMix mix) {
        Answers now = Answers.NONE
                .with(RENAMED.blank(), mix.name())
                .with(PARTS.blank(), Mixes.say(mix.parts()))
                .with(NOTE.blank(), mix.note());
        return LineSheet.of(
                        "Correct " + mix.name(),
                        "correct mix " + mix.name(),
                        "mix '" + mix.name() + "'",
                        List.of(RENAMED, PARTS, NOTE))
                .filled(now)
                .over(new Edit.Put(new PottingMix(mix.id(), mix.name(), List.of(), "")));
    }

    static LineSheet container() {
        return LineSheet.of(
                "New container",
                "new container",
                "container",
                List.of(NAME, SHAPE, ACROSS, HEIGHT, STOCK, UNWASHED, NOTE));
    }

    static LineSheet correct(Container container, LengthUnit unit) {
        Answers now = Answers.NONE
                .with(RENAMED.blank(), container.name())
                .with(
                        SHAPE.blank(),
                        container.shape() == Container.Shape.OTHER ? "" : Terms.SHAPES.say(container.shape()))
                .with(
                        ACROSS.blank(),
                        container
                                .across()
                                .map(across -> Lengths.say(across, unit))
                                .orElse(""))
                .with(
                        HEIGHT.blank(),
                        container
                                .height()
                                .map(height -> Lengths.say(height, unit))
                                .orElse(""))
                .with(STOCK.blank(), Integer.toString(container.stock()))
                .with(UNWASHED.blank(), container.unwashed() == 0 ? "" : Integer.toString(container.unwashed()))
                .with(NOTE.blank(), container.note());
        return LineSheet.of(
                        "Correct " + container.name(),
                        "correct container " + container.name(),
                        "container '" + container.name() + "'",
                        List.of(RENAMED, SHAPE, ACROSS, HEIGHT, STOCK, UNWASHED, NOTE))
                .filled(now)
                .over(new Edit.Put(bare(container)));
    }

    private static Container bare(Container container) {
        return new Container(
                container.id(), container.name(), Container.Shape.OTHER, Optional.empty(), Optional.empty(), 0, 0, "");
    }
}
