// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.Handbook;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Length;
import sillbook.model.Pot;
import sillbook.model.Potting.Depth;
import sillbook.model.Potting.Holes;
import sillbook.model.Season;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Window;
import sillbook.season.Ahead;
import sillbook.season.BatchPart;
import sillbook.season.Bloom;
import sillbook.season.ColdCount;
import sillbook.season.ColdTime;
import sillbook.season.Noted;
import sillbook.season.Outlook;
import sillbook.season.PotNow;
import sillbook.season.SignAhead;
import sillbook.season.Stay;
import sillbook.season.Suspect;
import sillbook.season.WishNow;
import sillbook.season.Years;
import sillbook.words.CautionWords;
import sillbook.words.Entries;
import sillbook.words.LearntWords;
import sillbook.words.Provisos;
import sillbook.words.SuspectWords;
import sillbook.words.Terms;

/** Pots as JSON. */
public final class PotsJson {
    private final Journal journal;
    private final Named named;
    private final JobJson jobs;

    private PotsJson(Journal journal, LocalDate today) {
        this.journal = journal;
        this.named = new Named(journal);
        this.jobs = new JobJson(named, today);
    }

    /** The document of {@code sillbook pots --json}. */
    public static String list(Journal journal, LocalDate today, Season season, List<PotNow> pots, Provisos provisos) {
        PotsJson json = new PotsJson(journal, today);
        Fields fields = new Fields()
                .day("day", today)
                .text("season", json.named.season(season))
                .list("pots", pots, json::pot);
        return Answer.write(fields, provisos);
    }

    /**
     * The document of {@code sillbook pot LABEL --json}.
     *
     * @param outlook of the day, for what stands with it
     */
    public static String one(Journal journal, Outlook outlook, PotNow pot, Provisos provisos) {
        PotsJson json = new PotsJson(journal, outlook.day());
        Fields card = json.card(pot, outlook);
        return Answer.write(new Fields().day("day", outlook.day()).object("pot", card), provisos);
    }

    private Fields pot(PotNow now) {
        Pot pot = now.life().pot();
        ColdTime cold = now.life().cold();
        return new Fields()
                .text("label", pot.label())
                .text("season", named.season(pot))
                .list("plantings", pot.plantings(), planting -> planting(planting, points(now, planting)))
                .text("stage", Terms.STAGES.say(now.life().stage()))
                .text("place", named.place(now.life().stands().map(Stay::place)))
                .happened("potted", now.life().potted())
                .happened("stageSince", now.life().standing().begun())
                .number("daysInCold", cold.daysIn())
                .number("daysColdEnough", cold.daysColdEnough())
                .object("coldNeededDays", now.coldNeed().map(need -> need.whole()), PotsJson::days)
                .object("cold", cold(now))
                .object("readiness", now.readiness(), JobJson::readiness)
                .day("useBy", now.useBy())
                .object("wish", now.wish(), PotsJson::wish)
                .list("ahead", now.ahead(), PotsJson::ahead)
                .list("signs", now.signs(), PotsJson::sign)
                .object("next", now.next(), jobs::ofPots);
    }

    /** Its own in a mixed pot; where one variety has a pot to itself, the pot's are its own. */
    private static Bloom.Points points(PotNow now, Pot.Planting planting) {
        Bloom bloom = now.life().bloom();
        return now.life().pot().isMixed() ? bloom.of(planting.variety()) : bloom.pot();
    }

    private Fields planting(Pot.Planting planting, Bloom.Points points) {
        return new Fields()
                .text("variety", named.variety(planting.variety()))
                .text("kind", journal.varieties().get(planting.variety()).kind().toString())
                .number("bulbs", planting.count())
                .happened("firstFlower", points.firstFlower())
                .happened("fullBloom", points.fullBloom())
                .happened("pastBloom", points.pastBloom());
    }

    /** What of its days in the cold was read, and what of them counts; in days. */
    private static Fields cold(PotNow now) {
        ColdCount count = now.life().cold().count();
        return new Fields()
                .number("days", count.daysIn())
                .number("read", count.read())
                .number("assumed", count.assumed())
                .number("unaccounted", count.unaccounted())
                .number("enoughLeast", count.least())
                .number("enough", count.likely())
                .number("enoughMost", count.most())
                .day("began", now.life().cold().began())
                .object("metOn", met(now), PotsJson::met);
    }

    private static Optional<Window> met(PotNow now) {
        return now.coldAhead()
                .flatMap(cold ->
                        now.coldNeed().map(need -> cold.between(need.potted().typical())));
    }

    private static Fields met(Window met) {
        return new Fields().window(met);
    }

    private static Fields days(DayCount days) {
        return new Fields()
                .number("low", days.low())
                .number("typical", days.typical())
                .number("high", days.high());
    }

    private static Fields wish(WishNow wish) {
        return new Fields()
                .day("from", wish.wish().from())
                .day("to", wish.wish().to())
                .written("feast", wish.wish().feast())
                .text("verdict", wish.judgement().map(judgement -> Fields.code(judgement.verdict())));
    }

    private static Fields ahead(Ahead ahead) {
        Optional<String> origin = ahead.figure().map(figure -> figure.origin().word());
        return new Fields()
                .text("stage", Terms.STAGES.say(ahead.stage()))
                .window(ahead.window())
                .text("origin", origin)
                .whole("learntFrom", ahead.figure().map(FigureInForce::pots).filter(pots -> pots > 0));
    }

    private static Fields sign(SignAhead sign) {
        return new Fields()
                .text("sign", LearntWords.sign(sign.sign()))
                .window(sign.window())
                .number("learntFrom", sign.length().length().pots());
    }

    private Fields display(Noted<String> in, List<Id<Pot>> pots) {
        return new Fields().text("name", in.value()).happened("since", in.day()).texts("pots", named.labels(pots));
    }

    private Fields part(BatchPart part) {
        return new Fields()
                .texts("pots", named.labels(part.pots()))
                .text("stage", Terms.STAGES.say(part.stage()))
                .text("place", named.place(part.place()))
                .text("end", part.end().map(Terms.ENDS::say));
    }

    private static Fields worn(Noted<Care> care) {
        return new Fields().text("care", Terms.CARES.say(care.value())).happened("since", care.day());
    }

    private Fields card(PotNow now, Outlook outlook) {
        Pot pot = now.life().pot();
        Id<Pot> id = pot.id();
        return pot(now).text("way", Terms.WAYS.say(pot.way()))
                .text(
                        "container",
                        pot.container().map(one -> journal.containers().get(one).name()))
                .decimal("acrossCm", pot.across().map(Length::centimetres))
                .text(
                        "pottingMix",
                        pot.pottingMix()
                                .map(one -> journal.pottingMixes().get(one).name()))
                .written("usualWay", pot.potting().usualWay())
                .text(
                        "holes",
                        Optional.of(pot.potting().holes())
                                .filter(one -> one != Holes.NOT_SAID)
                                .map(Terms.HOLES::say))
                .text(
                        "depth",
                        Optional.of(pot.potting().depth())
                                .filter(one -> one != Depth.NOT_SAID)
                                .map(Terms.DEPTHS::say))
                .written("topping", pot.potting().topping())
                .text("parentSeason", pot.parent().map(journal.pots()::get).map(named::season))
                .written("note", pot.note())
                .list("worn", now.life().dress(), PotsJson::worn)
                .object("display", now.life().display(), in -> display(in, outlook.inDisplay(in.value())))
                .list("batch", outlook.batchOf(id), this::part)
                .list("history", journal.history(id), this::entry)
                .list("winters", now.life().years().past(), this::winter)
                .list("outcomes", journal.outcomesOf(id), outcome -> OutcomeJson.of(named, outcome))
                .list(
                        "causes",
                        now.life().isFailed() ? outlook.suspects(id, journal.failureOf(id)) : List.of(),
                        this::suspect)
                .texts("cautions", new CautionWords(Handbook.standard(), journal.settings()).of(journal, pot));
    }

    /** A winter of a plant that lives on, once it is over. */
    private Fields winter(Years.Year year) {
        Bloom.Points bloom = year.bloom().pot();
        return new Fields()
                .day("began", year.began().map(Day::likely))
                .day("ended", year.endExclusive())
                .happened("firstFlower", bloom.firstFlower())
                .happened("pastBloom", bloom.pastBloom());
    }

    private Fields suspect(Suspect suspect) {
        return new Fields()
                .text("cause", SuspectWords.cause(suspect.cause()))
                .text("says", SuspectWords.code(suspect.verdict()))
                .texts("entries", new SuspectWords(journal).clues(suspect))
                .texts("fits", fits(suspect, true))
                .texts("against", fits(suspect, false));
    }

    private static List<String> fits(Suspect suspect, boolean speaksFor) {
        return suspect.fits().stream()
                .filter(fit -> fit.speaksFor() == speaksFor)
                .map(SuspectWords::found)
                .toList();
    }

    private Fields entry(Event event) {
        return new Fields()
                .happened("day", event.day())
                .text("writtenAt", event.writtenAt().toString())
                .text("says", new Entries(journal).say(event.what()))
                .object("what", HappeningJson.of(named, event.what()));
    }
}
