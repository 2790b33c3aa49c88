// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Choice;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Purchase;
import sillbook.model.Settings;
import sillbook.model.Subject;
import sillbook.model.Variety;
import sillbook.season.Suiting;
import sillbook.season.VarietyNow;
import sillbook.season.past.VarietyWinter;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.card.EntryLine;
import sillbook.ui.screen.list.Labelled;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.words.CautionWords;
import sillbook.words.ChoosingWords;
import sillbook.words.ColdTriedWords;
import sillbook.words.Lengths;
import sillbook.words.PurchaseWords;
import sillbook.words.RecordWords;
import sillbook.words.SuitingWords;
import sillbook.words.Terms;

/** The lines of a variety's card: what it is, what to beware of, its record, its figures, purchases and notes. */
final class VarietyCardRows {
    private final State state;
    private final Settings settings;
    private final VarietyNow now;
    private final Variety variety;
    private final List<Row> rows = new ArrayList<>();

    VarietyCardRows(State state, VarietyNow now) {
        this.state = state;
        this.settings = state.journal().settings();
        this.now = now;
        this.variety = now.variety();
    }

    Rows rows() {
        rows.add(Row.of(new Thing.OfVariety(variety.id()), this::head));
        what();
        cautions();
        record();
        rows.add(Row.heading("Figures"));
        rows.addAll(new VarietyFigures(state, variety).rows());
        purchases();
        rows.addAll(EntryLine.newestFirst(state.journal(), new Subject.OfVariety(variety.id()), "Notes"));
        return Rows.of(rows);
    }

    private void head(Rect line, Cells cells) {
        int after = cells.put(line.column() + Row.LABEL, line.row(), "'" + variety.name() + "'", Style.BOLD);
        cells.put(after + 2, line.row(), variety.kind() + ", " + now.inHand() + " in hand", Style.INK);
    }

    private void what() {
        List<String> facts = new ArrayList<>();
        variety.height()
                .map(tall -> Lengths.say(tall, settings.lengths()) + " tall")
                .ifPresent(facts::add);
        if (variety.bloomSeason() != Variety.BloomSeason.NOT_SAID) {
            facts.add("flowers " + Terms.BLOOM_SEASONS.say(variety.bloomSeason()));
        }
        said("", variety.colour()).ifPresent(facts::add);
        if (variety.scent() != Variety.Scent.NOT_SAID) {
            facts.add(Terms.SCENTS.say(variety.scent()));
        }
        said("sold as ", variety.packetName()).ifPresent(facts::add);
        labelledIfSaid("", String.join("; ", facts));
        Suiting suiting = state.almanac().outlook().suiting(variety);
        SuitingWords words = new SuitingWords(state.kit().handbook(), settings);
        labelledIfSaid(
                "Pots",
                Stream.of(words.why(variety, suiting), SuitingWords.byPacket(variety, suiting))
                        .flatMap(Optional::stream)
                        .collect(joining(" ")));
        labelledIfSaid("Note", variety.note());
        marked();
    }

    /** For the coming season. */
    private void marked() {
        Journal journal = state.journal();
        journal.choiceHolding(variety.id(), journal.chosenFor(state.shown().today()))
                .filter(Choice::isDecided)
                .ifPresent(choice -> labelled("Mark", new ChoosingWords(journal).marked(choice)));
    }

    private static Optional<String> said(String before, String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(before + text);
    }

    private void cautions() {
        CautionWords words = new CautionWords(state.kit().handbook(), settings);
        boolean isKnown = state.kit().handbook().entry(variety.kind()).isPresent();
        Stream<String> ofKind = words.of(variety.kind()).stream();
        List<String> cautions = isKnown
                ? ofKind.toList()
                : Stream.concat(ofKind, words.general().stream()).toList();
        rows.addAll(Labelled.each(
                "Beware",
                cautions.stream().map(caution -> "▴ " + caution).toList(),
                state.body().columns()));
    }

    /** Winter by winter, the last first. */
    private void record() {
        labelled("Record", RecordWords.total(now));
        List<VarietyWinter> winters = new ArrayList<>(state.almanac().winters().winterByWinter(variety.id()));
        Collections.reverse(winters);
        if (!winters.isEmpty()) {
            rows.add(Row.of(RecordLine::heading));
        }
        winters.forEach(winter -> rows.add(
                Row.of(thing(winter), new RecordLine(winter, state.journal())).withMark(Labelled.TEXT)));
        labelledIfSaid(
                "Cold",
                String.join("; ", ColdTriedWords.each(state.almanac().winters().coldTried(variety.id()))));
    }

    private static Thing thing(VarietyWinter winter) {
        return new Thing.Named("winter " + winter.winter().year());
    }

    /** The winter a thing of the card stands for; empty when it is none. */
    static Optional<VarietyWinter> winter(State state, Id<Variety> variety, Thing thing) {
        return state.almanac().winters().winterByWinter(variety).stream()
                .filter(winter -> thing(winter).equals(thing))
                .findFirst();
    }

    private void purchases() {
        PurchaseWords words = new PurchaseWords(state.journal());
        List<Row> bought = state.journal().purchases().all().stream()
                .filter(purchase -> purchase.variety().equals(variety.id()))
                .sorted(Comparator.comparing(Purchase::day).reversed())
                .map(purchase ->
                        Row.of(new Thing.OfPurchase(purchase.id()), new PurchaseLine(purchase, words.brief(purchase))))
                .toList();
        if (!bought.isEmpty()) {
            rows.add(Row.heading("Purchases"));
            rows.addAll(bought);
        }
    }

    private void labelled(String label, String text) {
        rows.addAll(new Labelled(label, text).rows(state.body().columns()));
    }

    private void labelledIfSaid(String label, String text) {
        rows.addAll(Labelled.ifSaid(label, text, state.body().columns()));
    }
}
