// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Failure;
import sillbook.model.Findings;
import sillbook.model.Happening;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Impression;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Outcome;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.model.Stage;
import sillbook.model.Subject;
import sillbook.model.Variety;

/** The journal of a grower of 200 pots a winter after ten winters, the last of them in full swing: about 15 events a pot. */
public final class TenSeasons {
    public static final int POTS_A_SEASON = 200;
    public static final int LAST_YEAR = 2026;

    private static final int CHECKS = 10;

    private final List<Entity<?>> entities = new ArrayList<>();
    private long lastId = 1;

    private TenSeasons() {}

    public static Journal journal() {
        TenSeasons made = new TenSeasons();
        made.add();
        return Journal.of(made.entities);
    }

    private <T> Id<T> id() {
        lastId += 0x9E3779B97F4A7C15L;
        return new Id<>(lastId, ~lastId);
    }

    private void add() {
        Place cellar = Place.of(id(), "cellar", Place.Sort.CELLAR);
        Place sill = Place.of(id(), "kitchen sill", Place.Sort.WARM_SILL);
        entities.addAll(List.of(Settings.initial(ZoneOffset.UTC), cellar, sill));
        for (int number = 0; number < 60; number++) {
            entities.add(Variety.of(id(), "Bluejar " + number, Kind.of("hyacinth")));
        }
        for (int year = LAST_YEAR - 9; year <= LAST_YEAR; year++) {
            for (int number = 1; number <= POTS_A_SEASON; number++) {
                addPot(new Season(year), number, cellar, sill);
            }
        }
    }

    private void addPot(Season season, int number, Place cellar, Place sill) {
        Variety variety = (Variety) entities.get(3 + number % 60);
        Pot pot = new Pot(
                id(),
                season,
                "H" + number,
                List.of(new Pot.Planting(variety.id(), 3, Optional.empty())),
                Pot.Way.DRAINED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Potting.NOT_SAID,
                Optional.empty(),
                Optional.empty(),
                "");
        entities.add(pot);
        LocalDate potted = LocalDate.of(season.year(), 10, 1).plusDays(number % 30);
        happens(pot, potted, 0, new Happening.Potted());
        happens(pot, potted, 1, new Happening.Moved(cellar.id(), Stage.COLD));
        for (int check = 1; check <= CHECKS; check++) {
            happens(pot, potted.plusDays(10L * check), 0, new Happening.Checked(Findings.ALL_WELL));
        }
        if (season.year() < LAST_YEAR) {
            addEnd(pot, potted, sill);
        }
    }

    private void addEnd(Pot pot, LocalDate potted, Place sill) {
        happens(pot, potted.plusDays(100), 0, new Happening.Moved(sill.id(), Stage.WARM_ROOM));
        happens(pot, potted.plusDays(120), 0, new Happening.Flowered(BloomPoint.FIRST_FLOWER, Optional.empty()));
        happens(pot, potted.plusDays(130), 0, new Happening.Flowered(BloomPoint.PAST_BLOOM, Optional.empty()));
        happens(pot, potted.plusDays(150), 0, new Happening.Closed(End.FINISHED, ""));
        entities.add(new Outcome(
                id(),
                pot.id(),
                Optional.empty(),
                Day.on(potted.plusDays(150)),
                Optional.of(4),
                Optional.of(3),
                Optional.empty(),
                Optional.of(potted.plusDays(120)),
                Optional.of(potted.plusDays(130)),
                Failure.NONE,
                Impression.of(Outcome.Again.YES),
                ""));
    }

    private void happens(Pot pot, LocalDate day, int order, Happening what) {
        Instant writtenAt = day.atTime(18, 30).toInstant(ZoneOffset.UTC);
        entities.add(
                new Event(id(), new Subject.OfPot(pot.id()), Day.on(day), order, writtenAt, Optional.empty(), what));
    }
}
