// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.packing;

/** A place in the plane. */
public record Point(double x, double y) {
    public static final Point MIDDLE = new Point(0, 0);

    /** At an angle in radians, counted from the x axis towards the y axis. */
    public static Point polar(double distance, double angle) {
        return new Point(distance * Math.cos(angle), distance * Math.sin(angle));
    }

    public double distance(Point other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /** Seen from the origin, nearer or farther by a factor. */
    public Point times(double factor) {
        return new Point(factor * x, factor * y);
    }

    /** Turned about the origin by an angle in radians. */
    public Point turned(double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return new Point(x * cos - y * sin, x * sin + y * cos);
    }
}
