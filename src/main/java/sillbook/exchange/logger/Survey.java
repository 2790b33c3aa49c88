// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.io.IOException;
import java.time.zone.ZoneRules;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import sillbook.model.DateOrder;
import sillbook.words.logger.Understood.Proof;

/** What only all lines of a file together can say: the order of its dates, whose readings it has, how far they lie apart. */
final class Survey {
    private static final int STEPS = 512;
    private static final int MOST_DEVICES = 40;
    private static final long USUAL_STEP = 3600;

    private final Layout layout;
    private final RowReader reader;
    private final List<Evidence> evidence;
    private final Set<String> devices = new LinkedHashSet<>();
    private final long[] steps = new long[STEPS];
    private byte[] lastDevice = {};
    private int stepCount;
    private long forward;
    private long lines;
    private long doubtful;
    private boolean rowsNameZone;
    private boolean isHalfDays;
    private String dateBefore = "";
    private int first = -1;
    private int second;
    private int third;
    private int secondOfDay;

    private Survey(Layout layout, Optional<byte[]> device, ZoneRules rules) {
        this.layout = layout;
        reader = new RowReader(layout, device);
        evidence = Stream.of(DateOrder.values())
                .map(order -> new Evidence(order, rules))
                .toList();
    }

    /**
     * Goes through all of it.
     *
     * @param device whose readings are meant, where that is known
     * @param rules of the zone in which instants are read that name none
     */
    static Survey of(Source source, Encoding encoding, Layout layout, Optional<byte[]> device, ZoneRules rules)
            throws IOException {
        Survey survey = new Survey(layout, device, rules);
        try (Lines all = new Lines(encoding.open(source))) {
            while (all.advance()) {
                if (all.number() >= layout.firstLine()) {
                    survey.line(all);
                }
            }
        }
        return survey;
    }

    private void line(Lines all) {
        if (!reader.readInstant(all)) {
            return;
        }
        noteDevice();
        if (reader.isOfDevice()) {
            lines++;
            noteInstant(all.number());
        }
    }

    private void noteDevice() {
        Cells cells = reader.cells();
        int column = layout.device().orElse(Cells.MOST);
        boolean isNew = column < cells.count()
                && devices.size() <= MOST_DEVICES
                && !Arrays.equals(
                        cells.bytes(), cells.from(column), cells.to(column), lastDevice, 0, lastDevice.length);
        if (isNew && !cells.isBlank(column)) {
            lastDevice = cells.copy(column);
            devices.add(Encoding.text(lastDevice));
        }
    }

    private void noteInstant(int line) {
        Moment moment = reader.moment();
        rowsNameZone |= moment.hasOffset();
        isHalfDays |= moment.isHalfDays();
        if (moment.isDated()) {
            noteDate(moment, line);
        }
    }

    private void noteDate(Moment moment, int line) {
        Supplier<Proof> written =
                () -> new Proof(line, dateText(), Optional.of(dateBefore).filter(text -> !text.isEmpty()));
        boolean isSame = moment.date().first() == first
                && moment.date().second() == second
                && moment.date().third() == third;
        if (isSame) {
            noteStep(moment.secondOfDay() - secondOfDay);
        } else {
            first = moment.date().first();
            second = moment.date().second();
            third = moment.date().third();
            evidence.forEach(order -> order.date(moment, written));
            dateBefore = evidence.stream().allMatch(Evidence::isSteady) ? "" : dateText();
        }
        secondOfDay = moment.secondOfDay();
        doubtful += moment.date().isSelfEvident() ? 0 : 1;
        for (Evidence order : evidence) {
            order.line(moment, written);
        }
    }

    private String dateText() {
        return Encoding.text(reader.cells().copy(layout.instants().date()));
    }

    private void noteStep(int step) {
        if (step != 0) {
            forward += step > 0 ? 1 : -1;
            if (stepCount < STEPS) {
                steps[stepCount++] = Math.abs(step);
            }
        }
    }

    /** Seconds from one reading to the next, as it usually is; below 0 where the newest stands first. */
    long usualStep() {
        long[] sorted = Arrays.copyOf(steps, stepCount);
        Arrays.sort(sorted);
        long usual = stepCount == 0 ? USUAL_STEP : sorted[stepCount / 2];
        return forward < 0 ? -usual : usual;
    }

    /** Lines with an instant, of the device that is meant. */
    long lines() {
        return lines;
    }

    /** Whose readings it has, as its column names them; one or none where it does not tell devices apart. */
    List<String> devices() {
        return devices.size() > MOST_DEVICES ? List.of() : List.copyOf(devices);
    }

    boolean rowsNameZone() {
        return rowsNameZone;
    }

    boolean isHalfDays() {
        return isHalfDays;
    }

    /** Whether any date could be read in more than one order, were it alone. */
    boolean isDoubtful() {
        return doubtful > 0;
    }

    long doubtful() {
        return doubtful;
    }

    List<Evidence> evidence() {
        return evidence;
    }
}
