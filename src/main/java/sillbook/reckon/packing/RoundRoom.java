// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.packing;

import java.util.SplittableRandom;

/**
 * A round room.
 *
 * @param diameter above 0
 */
public record RoundRoom(double diameter) implements Room {
    public RoundRoom {
        if (!(diameter > 0)) {
            throw new IllegalArgumentException("a room " + diameter + " across");
        }
    }

    @Override
    public double area() {
        return Math.PI * diameter * diameter / 4;
    }

    @Override
    public double clearance(Point centre) {
        return diameter / 2 - Math.hypot(centre.x(), centre.y());
    }

    @Override
    public Point somewhere(SplittableRandom random) {
        return Point.polar(diameter / 2 * Math.sqrt(random.nextDouble()), 2 * Math.PI * random.nextDouble());
    }

    @Override
    public double overhang(double x, double y, double radius, double[] slope, int at) {
        double out = Math.hypot(x, y);
        double over = out + radius - diameter / 2;
        if (over <= 0 || out == 0) {
            return 0;
        }
        slope[at] += 2 * over * x / out;
        slope[at + 1] += 2 * over * y / out;
        return over * over;
    }
}
