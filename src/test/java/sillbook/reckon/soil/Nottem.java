// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.soil;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** Mean temperatures of 240 months; their source stands beside the file. */
final class Nottem {
    private Nottem() {}

    static List<Double> fahrenheit() {
        try (InputStream in = Nottem.class.getResourceAsStream("nottem.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .flatMap(line -> Stream.of(line.split(",", -1)).skip(1))
                    .map(Double::valueOf)
                    .toList();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    static List<Double> celsius() {
        return fahrenheit().stream().map(degrees -> (degrees - 32) / 1.8).toList();
    }
}
