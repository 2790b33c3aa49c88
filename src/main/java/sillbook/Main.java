// SPDX-License-Identifier: Apache-2.0
package sillbook;

/** Wires the program together and opens it. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        System.out.println("Sillbook");
    }
}
