// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.FutureTask;
import sillbook.change.Step;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.ReadingSource;
import sillbook.store.Comparison;
import sillbook.store.DaySums;
import sillbook.store.Delivery;
import sillbook.store.Progress;

/** Takes deliveries in: their readings, where these are from, and what they come to. */
final class Deliveries {
    private static final String IS_TAKEN_IN = "SELECT count(*) FROM reading_source WHERE id = ?";
    private static final String ADD =
            "INSERT INTO taken_in (source, place, first_at, last_at, step) VALUES ('', ?, 0, 0, ?)";
    private static final String EXTENT = "UPDATE taken_in SET source = ?, first_at = ?, last_at = ? WHERE number = ?";
    private static final String NUMBER = "SELECT number FROM taken_in WHERE step = ?";
    private static final String PLACE_NAME = "SELECT name FROM place WHERE id = ?";

    /** Where nothing is kept nothing is summed up. */
    private static final DaySums.Tally NONE = new DaySums.Tally() {
        @Override
        public void read(long at, int milli) {}

        @Override
        public void end() {}
    };

    private final Database database;
    private final StepLog steps;
    private final Readings readings;
    private final DayReads days;
    private final WrongSums wrong;
    private final Originals originals;

    Deliveries(Database database, StepLog steps, Readings readings, DayReads days, WrongSums wrong) {
        this.database = database;
        this.steps = steps;
        this.readings = readings;
        this.days = days;
        this.wrong = wrong;
        this.originals = new Originals(database);
    }

    /** Within a transaction; empty when there is nothing to take in, and then what it began is to be rolled back. */
    Optional<Step> takeIn(Delivery delivery, Progress progress, Instant now) {
        FutureTask<Packed> packing = originals.packing(delivery.original());
        OnTheWay onTheWay = new OnTheWay(delivery.place(), days);
        Intake intake = begin(delivery.place());
        takeIn(delivery, intake, onTheWay, progress);
        Packed packed = originals.await(packing);
        Id<ReadingSource> id = ReadingSource.idOf(delivery.place(), packed.hash());
        if (intake.counting().readings() == 0 || isTakenIn(id)) {
            return Optional.empty();
        }
        keep(id, packed, intake);
        wrongSums(delivery.place(), intake, onTheWay).forEach(wrong::readings);
        ReadingSource source = source(id, delivery, packed.hash(), intake.counting());
        Step step = Step.takenIn(source, name(delivery.place()), delivery.beside());
        steps.add(step, now);
        return Optional.of(step);
    }

    private static void takeIn(Delivery delivery, Intake intake, DaySums.Tally sums, Progress progress) {
        try (FeedAhead ahead = new FeedAhead(delivery.feed())) {
            intake.takeIn(ahead, sums, progress);
        }
    }

    private void keep(Id<ReadingSource> id, Packed packed, Intake intake) {
        Counting counting = intake.counting();
        database.update(EXTENT, id.toString(), counting.first(), counting.last(), intake.source());
        originals.keep(intake.source(), packed);
    }

    /** Where readings did not come in order, or some were typed among them, all is to be worked out from what there is now. */
    private List<WrongSums.Stretch> wrongSums(Id<Place> place, Intake intake, OnTheWay onTheWay) {
        Counting counting = intake.counting();
        return intake.wasInOrder() && !readings.isTyped(place, counting.first(), counting.last())
                ? onTheWay.ends()
                : List.of(new WrongSums.Stretch(place, counting.first(), counting.last()));
    }

    /** Within a transaction that is to be rolled back. */
    Comparison compare(Delivery delivery, Progress progress) {
        FutureTask<Packed> packing = originals.packing(delivery.original());
        Intake intake = begin(delivery.place());
        takeIn(delivery, intake, NONE, progress);
        String hash = originals.await(packing).hash();
        return intake.counting().soFar(isTakenIn(ReadingSource.idOf(delivery.place(), hash)));
    }

    private boolean isTakenIn(Id<ReadingSource> id) {
        return database.number(IS_TAKEN_IN, id.toString()) > 0;
    }

    /** Its source is named when all of it is known. */
    private Intake begin(Id<Place> place) {
        long step = steps.next();
        long number = readings.numberOrNew(place);
        database.update(ADD, number, step);
        return new Intake(database, number, database.number(NUMBER, step), step);
    }

    private static ReadingSource source(Id<ReadingSource> id, Delivery delivery, String hash, Counting counting) {
        return new ReadingSource(
                id,
                delivery.place(),
                delivery.name(),
                hash,
                counting.readings(),
                counting.suspicious(),
                Instant.ofEpochSecond(counting.first()),
                Instant.ofEpochSecond(counting.last()));
    }

    private String name(Id<Place> place) {
        return database.first(PLACE_NAME, Row::text, place.toString()).orElseThrow();
    }
}
