// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Purchase;
import sillbook.model.Purchase.State;
import sillbook.model.Stage;
import sillbook.model.Subject;
import sillbook.model.Variety;

/** The bulbs in hand that are in no pot yet, by the place they wait at. */
final class DryBulbs {
    private final Map<Id<Place>, List<WaitingBulbs>> byPlace = new HashMap<>();
    private final Journal journal;
    private final LocalDate today;

    DryBulbs(Journal journal, Figures figures, List<PotLife> lives, LocalDate today) {
        this.journal = journal;
        this.today = today;
        List<Purchase> waiting = journal.purchases().all().stream()
                .filter(purchase -> purchase.state() == State.IN_HAND)
                .filter(purchase -> purchase.waits().isPresent())
                .sorted(Comparator.comparing(Purchase::day).thenComparing(Purchase::id))
                .toList();
        if (!waiting.isEmpty()) {
            Map<Id<Purchase>, Integer> potted = potted(lives);
            waiting.forEach(
                    purchase -> add(purchase, purchase.sound() - potted.getOrDefault(purchase.id(), 0), figures));
        }
    }

    private void add(Purchase purchase, int left, Figures figures) {
        if (left > 0) {
            byPlace.computeIfAbsent(purchase.waits().orElseThrow(), at -> new ArrayList<>())
                    .add(waiting(purchase, left, figures));
        }
    }

    /** Bulbs of each purchase that are in pots; those of a pot that is made and waits to be potted are still dry. */
    private Map<Id<Purchase>, Integer> potted(List<PotLife> lives) {
        Set<Id<Pot>> unpotted = lives.stream()
                .filter(life -> life.stage() == Stage.WAITING && life.potted().isEmpty())
                .map(life -> life.pot().id())
                .collect(Collectors.toSet());
        return journal.pots().all().stream()
                .filter(pot -> !unpotted.contains(pot.id()))
                .flatMap(pot -> pot.plantings().stream())
                .filter(planting -> planting.purchase().isPresent())
                .collect(Collectors.groupingBy(
                        planting -> planting.purchase().orElseThrow(), Collectors.summingInt(Planting::count)));
    }

    private WaitingBulbs waiting(Purchase purchase, int left, Figures figures) {
        DryCold dry = new ColdReading(journal, today).dry(purchase, Optional.empty());
        return new WaitingBulbs(
                purchase, left, dry, figures.dryLimit(journal.varieties().get(purchase.variety())), felt(purchase));
    }

    private Optional<LocalDate> felt(Purchase purchase) {
        return journal.history(new Subject.OfPurchase(purchase.id())).stream()
                .filter(event -> event.what() instanceof Happening.Checked)
                .map(event -> event.day().likely())
                .filter(day -> !day.isAfter(today))
                .max(Comparator.naturalOrder());
    }

    /** The oldest purchase first. */
    List<WaitingBulbs> at(Id<Place> place) {
        return List.copyOf(byPlace.getOrDefault(place, List.of()));
    }

    /** All that are of a variety, in the order of the journal's places. */
    List<WaitingBulbs> of(Id<Variety> variety) {
        return journal.places().all().stream()
                .flatMap(place -> lookedAfterAt(place.id()).stream())
                .filter(bulbs -> bulbs.purchase().variety().equals(variety))
                .toList();
    }

    /** Those of this season or one to come; what is left over from another winter is asked after no more. */
    List<WaitingBulbs> lookedAfterAt(Id<Place> place) {
        return at(place).stream()
                .filter(bulbs -> bulbs.purchase().season().compareTo(journal.seasonOf(today)) >= 0)
                .toList();
    }
}
