// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/**
 * A length.
 *
 * @param tenths tenths of a millimetre
 * @param written as the grower wrote it ({@code 7.5in}); empty when it was worked out
 */
public record Length(int tenths, String written) {
    public Length {
        if (tenths < 0) {
            throw new IllegalArgumentException("a length below nothing: " + tenths);
        }
    }

    /** Rounded to the tenth of a millimetre. */
    public static Length ofCentimetres(double centimetres) {
        if (!Double.isFinite(centimetres)) {
            throw new IllegalArgumentException("no length: " + centimetres);
        }
        return new Length(Math.toIntExact(Math.round(centimetres * 100)), "");
    }

    public double centimetres() {
        return tenths / 100.0;
    }
}
