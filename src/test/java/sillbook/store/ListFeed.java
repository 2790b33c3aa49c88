// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import sillbook.model.Id;
import sillbook.model.Logged;
import sillbook.model.Place;

/** Readings from a list, each on its line. */
public final class ListFeed implements Feed {
    private final List<Logged> readings;
    private int line;

    public ListFeed(List<Logged> readings) {
        this.readings = readings;
    }

    /** A delivery of these, whose bytes are what they say. */
    public static Delivery delivery(Id<Place> place, String name, List<Logged> readings) {
        byte[] bytes = readings.stream()
                .map(reading -> reading.at() + "," + reading.milli() + "," + reading.isSuspicious())
                .collect(Collectors.joining("\n"))
                .getBytes(StandardCharsets.UTF_8);
        return new Delivery(place, name, () -> new ByteArrayInputStream(bytes), new ListFeed(readings));
    }

    @Override
    public boolean advance() {
        line++;
        return line <= readings.size();
    }

    private Logged now() {
        return readings.get(line - 1);
    }

    @Override
    public long at() {
        return now().at().getEpochSecond();
    }

    @Override
    public int milli() {
        return now().milli();
    }

    @Override
    public int line() {
        return line;
    }

    @Override
    public boolean isSuspicious() {
        return now().isSuspicious();
    }
}
