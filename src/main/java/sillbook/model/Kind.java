// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/**
 * A sort of bulb with its own figures: {@code tulip}, perhaps with its class ({@code Triumph}) or division ({@code 6}).
 *
 * @param name the kind's word, in small letters
 * @param group class or division as the trade writes it; empty when not said
 */
public record Kind(String name, String group) {
    public Kind {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a kind has a name");
        }
    }

    public static Kind of(String name) {
        return new Kind(name, "");
    }

    /** The same kind, its class or division left aside. */
    public Kind withoutGroup() {
        return group.isEmpty() ? this : of(name);
    }

    @Override
    public String toString() {
        return group.isEmpty() ? name : name + " " + group;
    }
}
