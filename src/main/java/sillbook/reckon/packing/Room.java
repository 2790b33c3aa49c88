// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.packing;

import java.util.SplittableRandom;

/** What discs lie in; it has its middle at the origin. */
public sealed interface Room permits RoundRoom, OblongRoom {
    double area();

    /** How far a disc may grow about that centre; below 0 where the centre is outside. */
    double clearance(Point centre);

    /** Somewhere in it, everywhere as likely. */
    Point somewhere(SplittableRandom random);

    /**
     * How far a disc sticks out, squared, summed over the walls; its slope is added to that of its centre.
     *
     * @param slope two numbers a disc
     * @param at where those of this disc begin
     */
    double overhang(double x, double y, double radius, double[] slope, int at);
}
