// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Journal;
import sillbook.model.Temperature;
import sillbook.reckon.heat.ThermalTime;
import sillbook.season.RoomWarmth;
import sillbook.season.RoomWarmth.Lasting;
import sillbook.season.RoomWarmth.SoFar;

/** What the warmth of its rooms comes to for a pot, as remarks. */
public record WarmthWords(Journal journal) {

    /** A remark each; none where nothing is known, or the room changes nothing. */
    public List<String> say(RoomWarmth warmth) {
        return Stream.concat(
                        warmth.soFar().map(this::soFar).stream(),
                        warmth
                                .bloom()
                                .filter(bloom -> Math.round(bloom.days()) != Math.round(bloom.usual()))
                                .map(this::lasting)
                                .stream())
                .toList();
    }

    private String soFar(SoFar soFar) {
        String read = soFar.daysRead() < soFar.days()
                ? ", " + soFar.daysRead() + " of " + Counts.of(soFar.days(), "day") + " read"
                : "";
        return Math.round(soFar.degreeDays()) + " degree-days above " + degrees(ThermalTime.TULIP_BASE)
                + " since it came in" + read
                + ". That base is published of garden tulips; how many a pot needs is not.";
    }

    private String lasting(Lasting bloom) {
        String how = bloom.isRead() ? " as read there" : " as usual there";
        String range = Math.round(bloom.least()) == Math.round(bloom.most())
                ? ""
                : " (" + Math.round(bloom.least()) + " to " + Math.round(bloom.most()) + ")";
        return "At " + degrees(bloom.celsius()) + how + ", a bloom of " + Counts.of(Math.round(bloom.usual()), "day")
                + " lasts about " + Math.round(bloom.days()) + range + ": a rough rule (?), taken from "
                + degrees(RoomWarmth.USUAL_ROOM) + ".";
    }

    private String degrees(double celsius) {
        return Temperatures.say(
                Temperature.ofCelsius(celsius), journal.settings().temperatures());
    }
}
