// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.change.Display;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.text.Fold;
import sillbook.words.Heard;

/** {@code T4 H2 C1 into display hall table}: several pots made up into one show, or taken out of it again. */
final class DisplayForm implements Form {
    private static final String INTO_WORDS = "into display ";
    private static final String DISPLAY_WORDS = "display ";
    private static final String APART_WORDS = " taken apart";

    private static final Slot<String> INTO =
            Slot.one("display", Senses.longest((words, bench) -> after(INTO_WORDS, words)));
    private static final Slot<Boolean> OUT = Slot.one("", Senses.flag("out of (?:the )?display"));
    private static final Slot<List<Pot>> APART = Slot.one("", Senses.longest(DisplayForm::takenApart));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "display",
                "Pots, into display and its name; a pot out of the display; or a display and taken apart. The day, if it was "
                        + "not today.",
                "T4 H2 C1 into display hall table",
                "T4 out of display",
                "display hall table taken apart");
    }

    private static Optional<Heard<String>> after(String lead, String words) {
        return Optional.of(words)
                .filter(said -> Fold.of(said).startsWith(lead))
                .map(said -> Heard.as(said.substring(lead.length()).strip()));
    }

    /** The pots of the display that is named. */
    private static Optional<Heard<List<Pot>>> takenApart(String words, Bench bench) {
        String said = Fold.of(words);
        if (!said.startsWith(DISPLAY_WORDS) || !said.endsWith(APART_WORDS)) {
            return Optional.empty();
        }
        String name = words.substring(DISPLAY_WORDS.length(), words.length() - APART_WORDS.length());
        List<Pot> pots = pots(name.strip(), bench);
        return Optional.of(pots.isEmpty() ? unknown(name.strip(), bench) : Heard.as(pots));
    }

    private static List<Pot> pots(String name, Bench bench) {
        Journal journal = bench.journal();
        return bench.outlook().inDisplay(name).stream().map(journal.pots()::get).toList();
    }

    private static Heard<List<Pot>> unknown(String name, Bench bench) {
        List<String> names = bench.outlook().displays();
        String there = names.isEmpty()
                ? "None is made up: write T4 H2 into display and a name."
                : "There is " + String.join(", ", names) + ".";
        return Heard.not("no such display", "No display is called '" + name + "'. " + there);
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.POTS, INTO, OUT, APART, Slots.DAY);
    }

    @Override
    public int wanting(Filled filled) {
        boolean isWhole = filled.has(APART);
        boolean isSaid = isWhole || filled.has(INTO) || filled.has(OUT);
        return (isWhole || filled.has(Slots.POTS) ? 0 : 1) + (isSaid ? 0 : 1);
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Pot> pots = filled.get(APART).orElseGet(() -> Slots.pots(filled));
        Lines.pots(pots, draft);
        Optional<String> name = filled.get(INTO);
        Lines.happened(name.map(display -> "into display " + display).orElse("out of the display"), filled, draft);
        if (name.isEmpty()) {
            standsInNone(pots, draft);
        }
        draft.change(new Display(Lines.ids(pots), name, Slots.day(filled, draft.bench())));
    }

    private static void standsInNone(List<Pot> pots, Draft draft) {
        List<Pot> alone = pots.stream()
                .filter(pot ->
                        draft.bench().outlook().pot(pot.id()).life().display().isEmpty())
                .toList();
        if (!alone.isEmpty()) {
            draft.ask("in no display", Lines.labels(alone) + (alone.size() == 1 ? " is" : " are") + " in no display.");
        }
    }
}
