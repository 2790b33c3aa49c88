// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import sillbook.reckon.packing.Point;

/** The best packings of 1 to 30 like discs that our search found; their ratios are the best known. They are read when first asked for. */
public final class Packings {
    public static final int MOST = 30;

    /** Ratios are compared to this. */
    public static final double ROUNDING = 1e-9;

    /**
     * No better packing of these exists: to 10 R. L. Graham 1968 and U. Pirl 1969, 11 H. Melissen 1994, 12 F. Fodor 2000, 13 F. Fodor 2003, 14 D. Ekanayake and D. LaFountain 2024, 19 F. Fodor 1999.
     */
    private static final Set<Integer> PROVEN = Set.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 19);

    private static final String FILE = "packings.tsv";

    private Packings() {}

    private static final class Shipped {
        private static final List<Packing> ALL = parse(resource());
    }

    /**
     * The packing of so many discs.
     *
     * @param count 1 to {@link #MOST}
     */
    public static Packing of(int count) {
        return Shipped.ALL.get(count - 1);
    }

    /** Whether no better one exists. */
    public static boolean isProven(int count) {
        return PROVEN.contains(count);
    }

    /** How many discs a room of that ratio holds, 0 to {@link #MOST}. */
    public static int most(double ratio) {
        int count = MOST;
        while (count > 0 && !(of(count).ratio() <= ratio + ROUNDING)) {
            count--;
        }
        return count;
    }

    /** The least number of discs that is proven not to fit a room of that ratio; more than {@link #MOST} where none is known. */
    static int tooMany(double ratio) {
        return PROVEN.stream()
                .filter(count -> of(count).ratio() > ratio + ROUNDING)
                .min(Integer::compare)
                .orElse(Integer.MAX_VALUE);
    }

    /** Lines of a count, x and y, with tabs between; the lines of one count are one packing. */
    static List<Packing> parse(String text) {
        TreeMap<Integer, List<Point>> centres = new TreeMap<>();
        text.lines().filter(line -> !line.startsWith("#")).forEach(line -> {
            String[] cells = line.split("\t", -1);
            centres.computeIfAbsent(Integer.valueOf(cells[0]), none -> new ArrayList<>())
                    .add(new Point(Double.parseDouble(cells[1]), Double.parseDouble(cells[2])));
        });
        return centres.values().stream().map(Packing::of).toList();
    }

    private static String resource() {
        try (InputStream in = Packings.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file " + FILE);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw new UncheckedIOException("could not read the program's file " + FILE, failed);
        }
    }
}
