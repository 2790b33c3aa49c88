// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sillbook.reckon.cover.ColdStay;
import sillbook.reckon.cover.DayWish;
import sillbook.reckon.cover.PotGroup;
import sillbook.reckon.cover.Room;
import sillbook.reckon.cover.Season;
import sillbook.reckon.cover.Task;
import sillbook.reckon.cover.Unreckonable;
import sillbook.text.Initial;
import sillbook.words.Heard;

/**
 * A season to be kept in bloom, read from JSON.
 *
 * @param assumed what the file left out, a phrase each
 */
public record CoverFile(Task task, List<String> assumed) {
    public CoverFile {
        assumed = List.copyOf(assumed);
    }

    /** What is asked in a file, or what is wrong with it. */
    public static Heard<CoverFile> read(Path file) {
        return WholeFile.read(file, CoverFile::read);
    }

    /** The same of a stream, which is read to its end. */
    public static Heard<CoverFile> read(InputStream in) {
        return WholeFile.bytes(in, "no season").then(CoverFile::parse);
    }

    private static Heard<CoverFile> parse(byte[] bytes) {
        try {
            return StrictJson.read(bytes, whole -> Heard.as(file(new JsonObject("the file", whole))));
        } catch (Unreckonable senseless) {
            return Heard.not("makes no sense", sentence(senseless));
        }
    }

    private static String sentence(Unreckonable senseless) {
        return Initial.large(String.valueOf(senseless.getMessage())) + ".";
    }

    private static CoverFile file(JsonObject whole) {
        whole.holdsOnly("season", "room", "sites", "cold", "pots", "wishes");
        JsonObject days = whole.object("season");
        days.holdsOnly("from", "to");
        List<String> assumed = new ArrayList<>();
        if (!whole.has("room") && !whole.has("sites")) {
            assumed.add("room for every pot");
        }
        if (whole.has("room") && whole.has("sites")) {
            throw new JsonObject.Misread("The file has a room and sites. Give each site its room.");
        }
        List<Room> sites = whole.has("sites") ? rooms(whole, "sites") : List.of(room(whole));
        List<PotGroup> pots = each(whole.list("pots"), "pot", CoverFile::pots);
        if (whole.list("pots").stream().anyMatch(pot -> !JsonObject.holds(pot, "takes"))) {
            assumed.add("a pot takes a room of 1");
        }
        return new CoverFile(
                new Task(
                        new Season(days.whole("from"), days.whole("to")),
                        sites,
                        rooms(whole, "cold"),
                        pots,
                        each(whole.list("wishes"), "wish", CoverFile::wish)),
                assumed);
    }

    private static List<Room> rooms(JsonObject whole, String name) {
        return each(whole.list(name), name.equals("cold") ? "cold place" : "site", place -> {
            place.holdsOnly("room");
            return room(place);
        });
    }

    private static Room room(JsonObject place) {
        return place.has("room") ? Room.of(place.whole("room")) : Room.ENDLESS;
    }

    private static PotGroup pots(JsonObject pot) {
        pot.holdsOnly("earliest", "latest", "toBloom", "lasts", "takes", "count", "sites", "cold");
        int earliest = pot.whole("earliest");
        int latest = pot.whole("latest");
        List<Integer> toBloom =
                pot.isList("toBloom") ? pot.wholes("toBloom") : PotGroup.steady(earliest, latest, pot.whole("toBloom"));
        return new PotGroup(
                earliest,
                latest,
                toBloom,
                pot.whole("lasts"),
                pot.whole("takes", 1),
                pot.whole("count", 1),
                fromZero(pot.wholes("sites")),
                pot.has("cold") ? Optional.of(stay(pot.object("cold"))) : Optional.empty());
    }

    private static ColdStay stay(JsonObject cold) {
        cold.holdsOnly("from", "places");
        return new ColdStay(cold.whole("from"), fromZero(cold.wholes("places")));
    }

    private static DayWish wish(JsonObject wish) {
        wish.holdsOnly("day", "count", "pots");
        return new DayWish(wish.whole("day"), wish.whole("count", 1), fromZero(wish.wholes("pots")));
    }

    private static List<Integer> fromZero(List<Integer> fromOne) {
        return fromOne.stream()
                .map(number -> Math.max(Integer.MIN_VALUE + 1, number) - 1)
                .toList();
    }

    /** Reads each, and says which of them makes no sense. */
    private static <T> List<T> each(List<JsonNode> nodes, String name, Function<JsonObject, T> reading) {
        List<T> all = new ArrayList<>();
        for (JsonNode node : nodes) {
            JsonObject object = new JsonObject(name + " " + (all.size() + 1), node);
            try {
                all.add(reading.apply(object));
            } catch (Unreckonable senseless) {
                throw new JsonObject.Misread(object.named() + ": " + senseless.getMessage() + ".");
            }
        }
        return all;
    }
}
