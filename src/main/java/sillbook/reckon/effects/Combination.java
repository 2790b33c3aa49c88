// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

/**
 * A sum of effects, carried through the triangle. Its squared length is its prediction error variance in units of the
 * residual's, so that of a difference is the squared distance of two.
 */
final class Combination {
    private final double[] parts;

    Combination(double[] parts) {
        this.parts = parts;
    }

    double[] parts() {
        return parts;
    }

    Combination plus(Combination other) {
        double[] sum = parts.clone();
        for (int k = 0; k < sum.length; k++) {
            sum[k] += other.parts[k];
        }
        return new Combination(sum);
    }

    double squaredLength() {
        double sum = 0;
        for (double part : parts) {
            sum += part * part;
        }
        return sum;
    }

    double squaredDistance(Combination other) {
        double sum = 0;
        for (int k = 0; k < parts.length; k++) {
            double apart = parts[k] - other.parts[k];
            sum += apart * apart;
        }
        return sum;
    }
}
