// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.reckon.shelf.Stay;
import sillbook.reckon.shelf.Stays;
import sillbook.words.Heard;

/** Pots that come and go, as JSON: a list of objects of {@code from}, {@code to} and {@code takes}. Days are written {@code 2027-01-15}, or counted from any. */
public final class StaysFile {
    private static final int MOST = 10_000;
    private static final int WIDEST = 10_000;
    private static final long FARTHEST = 1_000_000_000;

    private StaysFile() {}

    /** The stays in a file, or what is wrong with it. */
    public static Heard<Stays> read(Path file) {
        return WholeFile.read(file, StaysFile::read);
    }

    /** Reads to the end of it; whoever opened it closes it. */
    public static Heard<Stays> read(InputStream in) {
        return WholeFile.bytes(in, "no list of stays").then(bytes -> StrictJson.read(bytes, StaysFile::stays));
    }

    private static Heard<Stays> stays(JsonNode list) {
        if (!list.isArray() || list.size() > MOST) {
            return Heard.not(
                    "no list",
                    "It is no list of at most " + MOST
                            + " stays. Write it as [{\"from\": 0, \"to\": 21, \"takes\": 1}].");
        }
        List<Stay> stays = new ArrayList<>();
        for (JsonNode each : list) {
            JsonObject said = new JsonObject("stay " + (stays.size() + 1), each);
            said.holdsOnly("from", "to", "takes");
            stays.add(stay(each)
                    .orElseThrow(() -> new JsonObject.Misread(
                            said.named() + " is none. It wants from, a later to, and takes, a whole number from 1 to "
                                    + WIDEST + ".")));
        }
        return Heard.as(new Stays(stays));
    }

    private static Optional<Stay> stay(JsonNode each) {
        Optional<Long> from = day(each.path("from"));
        Optional<Long> to = day(each.path("to"));
        JsonNode takes = each.path("takes");
        boolean isWhole = takes.isIntegralNumber() && takes.canConvertToInt();
        return from.flatMap(first -> to.filter(last -> first < last)
                .filter(last -> isWhole && takes.intValue() >= 1 && takes.intValue() <= WIDEST)
                .map(last -> new Stay(first, last, takes.intValue())));
    }

    private static Optional<Long> day(JsonNode node) {
        if (node.isIntegralNumber()) {
            return Optional.of(node.longValue()).filter(day -> Math.abs(day) <= FARTHEST && node.canConvertToLong());
        }
        try {
            return Optional.of(LocalDate.parse(node.asText()).toEpochDay());
        } catch (DateTimeException wrong) {
            return Optional.empty();
        }
    }
}
