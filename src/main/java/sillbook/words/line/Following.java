// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.change.Step;
import sillbook.handbook.FigureName;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Outcome;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.reckon.dates.Window;
import sillbook.season.Ahead;
import sillbook.season.Concern;
import sillbook.season.Outlook;
import sillbook.season.PotNow;
import sillbook.season.Readiness;
import sillbook.words.ConcernWords;
import sillbook.words.Days;
import sillbook.words.OriginMarks;
import sillbook.words.PotWords;
import sillbook.words.VerdictWords;
import sillbook.words.Warned;
import sillbook.words.Weeks;

/**
 * What follows from a step for the first pot it brings further.
 *
 * @param pot as it would be
 * @param before as it is; empty when the step makes it
 * @param journal after the step
 */
record Following(PotNow pot, Optional<PotNow> before, Journal journal, LocalDate today) {

    /** Fewer days in the cold are no half week yet, and are not told. */
    private static final int FEWEST_DAYS = 2;

    /** Empty for a step that brings no pot further. */
    static Optional<Following> of(Step step, Bench bench) {
        return step.edits().stream()
                .flatMap(edit -> further(edit).stream())
                .findFirst()
                .map(pot -> after(step, pot, bench));
    }

    /** The pot whose dates an edit moves. */
    private static Optional<Id<Pot>> further(Edit edit) {
        boolean moves = edit instanceof Edit.Put
                && edit.entity() instanceof Event event
                && (event.what() instanceof Happening.Potted
                        || event.what() instanceof Happening.Moved
                        || event.what() instanceof Happening.Checked
                        || event.what() instanceof Happening.Flowered);
        return moves ? ((Event) edit.entity()).subject().asPot() : Optional.empty();
    }

    /** Only that pot is foretold, whatever else the journal holds: a line is read again at every key. */
    private static Following after(Step step, Id<Pot> pot, Bench bench) {
        Journal after = bench.journal().with(step.edits());
        List<Entity<?>> ofThatPot = new ArrayList<>();
        after.entities().stream().filter(entity -> concerns(entity, pot)).forEach(ofThatPot::add);
        Outlook outlook = Outlook.of(Journal.of(ofThatPot), bench.handbook(), bench.today());
        Optional<PotNow> before =
                bench.journal().pots().find(pot).map(known -> bench.outlook().pot(pot));
        return new Following(outlook.pot(pot), before, after, bench.today());
    }

    private static boolean concerns(Entity<?> entity, Id<Pot> pot) {
        if (entity instanceof Pot other) {
            return other.id().equals(pot);
        }
        if (entity instanceof Event event) {
            return event.subject().asPot().equals(Optional.of(pot));
        }
        return !(entity instanceof Outcome);
    }

    private boolean isNew() {
        return before.isEmpty();
    }

    /** What the grower should know of the pot that was not so before. */
    List<Warned> concerns() {
        List<Concern> known = before.map(PotNow::concerns).orElse(List.of());
        ConcernWords words = new ConcernWords(journal);
        return pot.concerns().stream()
                .filter(concern -> known.stream().noneMatch(old -> old.code().equals(concern.code())))
                .map(concern -> new Warned(concern.code(), words.say(concern)))
                .toList();
    }

    /** When its next stages begin; without a full stop. */
    List<String> says() {
        List<String> says = new ArrayList<>();
        boolean waits = pot.coldNeed().isPresent() && pot.life().stage() == Stage.WAITING;
        if (isNew() && (waits || pot.coldNeed().isEmpty())) {
            says.add(waits ? "needs" + need() + " of cold, which has not begun" : "no cold needed");
        }
        pot.readiness().ifPresent(ready -> says.add(inCold(ready)));
        Stream.of(
                        ahead(Stage.WARM_ROOM)
                                .filter(warm -> pot.readiness().isEmpty() && !waits)
                                .map(warm -> "warm room from " + window(warm)),
                        ahead(Stage.IN_BLOOM).map(bloom -> "in bloom from about " + window(bloom)),
                        ahead(Stage.AFTER_BLOOM)
                                .filter(past -> pot.life().stage() == Stage.IN_BLOOM)
                                .map(past -> "past bloom about " + window(past)))
                .flatMap(Optional::stream)
                .forEach(says::add);
        return says;
    }

    /** {@code 13 weeks in, if cold since; ready about Wed 27 Jan (▫15 weeks)}. */
    private String inCold(Readiness ready) {
        int daysIn = pot.life().cold().daysIn();
        String had = isNew()
                ? Weeks.sayDays(daysIn) + " in, if cold since"
                : PotWords.cold(daysIn, pot.life().cold().daysColdEnough());
        String then = ready.coldEnoughOn().isAfter(today)
                ? "ready about " + Days.day(ready.coldEnoughOn()) + " (" + need().strip() + ")"
                : VerdictWords.brief(ready.verdict());
        return daysIn < FEWEST_DAYS ? then : had + "; " + then;
    }

    private String need() {
        return pot.figures()
                .find(FigureName.COLD)
                .map(figure -> " " + OriginMarks.marked(figure) + " weeks")
                .orElse("");
    }

    private Optional<Ahead> ahead(Stage stage) {
        return pot.ahead().stream().filter(ahead -> ahead.stage() == stage).findFirst();
    }

    /** {@code Tue 26 Jan (19 Jan to 2 Feb)}. */
    private static String window(Ahead ahead) {
        Window window = ahead.window();
        return Days.day(window.likely())
                + (window.isExact() ? "" : " (" + Days.fromTo(window.earliest(), window.latest()) + ")");
    }
}
