// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.Map;
import java.util.function.BiFunction;
import sillbook.model.Choice;
import sillbook.model.Container;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Intention;
import sillbook.model.Journal;
import sillbook.model.LoggerProfile;
import sillbook.model.Outcome;
import sillbook.model.OwnFigure;
import sillbook.model.OwnKind;
import sillbook.model.PastWindows;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.PottingMix;
import sillbook.model.Purchase;
import sillbook.model.ReadingSource;
import sillbook.model.SeasonPlan;
import sillbook.model.Settings;
import sillbook.model.Space;
import sillbook.model.SpanReading;
import sillbook.model.SpotReading;
import sillbook.model.Thermometer;
import sillbook.model.Trench;
import sillbook.model.UsualWay;
import sillbook.model.Variety;
import sillbook.model.Wish;

/** What each type of entity is called in the name of a step. */
final class EntityNames {
    private static final Map<Class<?>, BiFunction<Journal, Entity<?>, String>> NAMES = Map.ofEntries(
            named(Settings.class, (journal, settings) -> "settings"),
            named(OwnKind.class, (journal, kind) -> "kind " + kind.name()),
            named(OwnFigure.class, EntityNames::figure),
            named(Variety.class, (journal, variety) -> "variety '" + variety.name() + "'"),
            named(Purchase.class, EntityNames::purchase),
            named(PottingMix.class, (journal, mix) -> "potting mix " + mix.name()),
            named(Container.class, (journal, container) -> "container " + container.name()),
            named(UsualWay.class, (journal, way) -> "usual way " + way.name()),
            named(Place.class, (journal, place) -> "place " + place.name()),
            named(Space.class, (journal, space) -> "shelf of " + Said.place(journal, space.place())),
            named(Trench.class, (journal, trench) -> "ground of " + Said.place(journal, trench.place())),
            named(Pot.class, (journal, pot) -> "pot " + pot.label()),
            named(Event.class, (journal, event) -> "entry of " + Said.subject(journal, event.subject())),
            named(SpanReading.class, (journal, reading) -> "reading of " + Said.place(journal, reading.place())),
            named(SpotReading.class, (journal, reading) -> "reading of " + Said.place(journal, reading.place())),
            named(
                    ReadingSource.class,
                    (journal, source) ->
                            "readings of " + Said.place(journal, source.place()) + " from " + source.name()),
            named(LoggerProfile.class, (journal, profile) -> "file format of " + Said.place(journal, profile.place())),
            named(
                    Thermometer.class,
                    (journal, thermometer) -> "thermometer of " + Said.place(journal, thermometer.place())),
            named(Outcome.class, EntityNames::outcome),
            named(Wish.class, (journal, wish) -> "wish for " + wishedFor(wish)),
            named(Choice.class, EntityNames::choice),
            named(
                    SeasonPlan.class,
                    (journal, plan) -> "plan " + plan.name() + " of " + Said.season(journal, plan.season())),
            named(
                    Intention.class,
                    (journal, meant) -> "what is meant for "
                            + journal.pots().get(meant.pot()).label()),
            named(PastWindows.class, (journal, windows) -> "windows before " + Said.season(journal, windows.season())));

    private EntityNames() {}

    static String of(Journal journal, Entity<?> entity) {
        BiFunction<Journal, Entity<?>, String> name = NAMES.get(entity.getClass());
        if (name == null) {
            throw new IllegalStateException("no name for " + entity.getClass());
        }
        return name.apply(journal, entity);
    }

    private static <T extends Entity<T>> Map.Entry<Class<?>, BiFunction<Journal, Entity<?>, String>> named(
            Class<T> type, BiFunction<Journal, T, String> name) {
        return Map.entry(type, (journal, entity) -> name.apply(journal, type.cast(entity)));
    }

    private static String figure(Journal journal, OwnFigure figure) {
        String holder = figure.scope()
                .variety()
                .map(variety -> Said.variety(journal, variety))
                .or(() -> figure.scope().kind().map(Object::toString))
                .orElse("all hardy kinds");
        String whose = figure.range().isPresent() ? "own figure, " : "handbook's figure, ";
        return whose + figure.figure() + " of " + holder;
    }

    private static String purchase(Journal journal, Purchase purchase) {
        return "purchase, " + purchase.count() + " " + Said.variety(journal, purchase.variety());
    }

    private static String outcome(Journal journal, Outcome outcome) {
        String score = outcome.score().map(given -> " " + given + " of 5").orElse("");
        String which = outcome.variety()
                .map(variety -> ", " + Said.variety(journal, variety))
                .orElse("");
        return "outcome" + score + " of " + journal.pots().get(outcome.pot()).label() + which;
    }

    private static String choice(Journal journal, Choice choice) {
        return "choice of " + Said.variety(journal, choice.variety()) + " for " + Said.season(journal, choice.season());
    }

    private static String wishedFor(Wish wish) {
        String day = wish.from().equals(wish.to())
                ? Said.day(wish.from())
                : Said.day(wish.from()) + " to " + Said.day(wish.to());
        return wish.feast().isEmpty() ? day : wish.feast();
    }
}
