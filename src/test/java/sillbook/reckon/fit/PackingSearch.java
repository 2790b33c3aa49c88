// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import sillbook.reckon.packing.Growth;
import sillbook.reckon.packing.Point;
import sillbook.reckon.packing.RoundRoom;

/**
 * Finds the packings that the program ships: of many starts the best, or the first that is as good as the best known. Where one disc more finds no smaller room, the packing is that of one more, without the disc nearest the middle; so 6 comes of 7 and 18 of 19. As a
 * program it writes the file anew.
 */
final class PackingSearch {
    static final Path FILE = Path.of("src/main/resources/sillbook/reckon/fit/packings.tsv");

    private static final int STARTS = 2000;
    private static final double SAME = 1e-8;
    private static final List<String> HEAD = List.of(
            "# SPDX-License-Identifier: Apache-2.0",
            "# Like discs in a room of radius 1, as large as they may be: count, x and y of each centre, outermost first.",
            "# Found by sillbook.reckon.fit.PackingSearch, beside the tests: of up to " + STARTS
                    + " starts the first as good as the best known.");

    private PackingSearch() {}

    /**
     * Writes the file.
     *
     * @param counts to be searched anew, the others being kept; none for all
     */
    public static void main(String... counts) throws IOException {
        TreeMap<Integer, Packing> found = new TreeMap<>();
        for (int count = Packings.MOST; count > 0; count--) {
            boolean isAnew = counts.length == 0 || List.of(counts).contains(Integer.toString(count));
            Packing best = isAnew ? searched(count, STARTS, enough(count)) : Packings.of(count);
            Packing more = found.get(count + 1);
            found.put(count, more != null && more.ratio() < best.ratio() + SAME ? without(more) : best);
        }
        List<String> lines = new ArrayList<>(HEAD);
        found.values().forEach(packing -> packing.centres().forEach(centre -> lines.add(line(packing, centre))));
        Files.writeString(FILE, String.join("\n", lines) + "\n", UTF_8);
    }

    /** A radius as good as the published one, to a thousand millionth; read from the table beside the tests. */
    private static double enough(int count) throws IOException {
        String row = Files.readAllLines(Path.of("src/test/resources/sillbook/reckon/fit/ratios.csv"))
                .get(count);
        return 1 / (Double.parseDouble(row.split(",", -1)[1]) + 1e-9);
    }

    private static String line(Packing packing, Point centre) {
        return String.format(Locale.ROOT, "%d\t%.13f\t%.13f", packing.count(), centre.x(), centre.y());
    }

    /**
     * Searches for one.
     *
     * @param enough a disc's radius that is large enough
     */
    static Packing searched(int count, int starts, double enough) {
        Growth growth = Growth.ofLike(new RoundRoom(2), count, 1);
        return arranged(growth.best(starts, count, enough).centres());
    }

    private static Packing without(Packing more) {
        Point middle = more.centres().stream()
                .min(Comparator.comparingDouble(PackingSearch::out))
                .orElseThrow();
        return arranged(
                more.centres().stream().filter(centre -> !centre.equals(middle)).toList());
    }

    /** Turned so that an outermost one is at the top, and in the order in which they are counted: rings from outside, each clockwise from the top. */
    private static Packing arranged(List<Point> centres) {
        Point first = centres.stream()
                .max(Comparator.comparingDouble(PackingSearch::out))
                .orElseThrow();
        double turn = Math.PI / 2 - Math.atan2(first.y(), first.x());
        double radius = 1 / Packing.of(centres).ratio();
        return Packing.of(centres.stream()
                .map(centre -> centre.turned(turn))
                .sorted(Comparator.comparingLong((Point centre) -> ring(centre, radius))
                        .thenComparingDouble(PackingSearch::clockwise))
                .toList());
    }

    private static double out(Point centre) {
        return centre.distance(Point.MIDDLE);
    }

    private static long ring(Point centre, double radius) {
        return Math.round((1 - radius - out(centre)) / radius);
    }

    private static double clockwise(Point centre) {
        double angle = Math.PI / 2 - Math.atan2(centre.y(), centre.x());
        return (angle + 2 * Math.PI + 1e-6) % (2 * Math.PI);
    }
}
