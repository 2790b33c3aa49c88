// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** The data of {@code sillbook/reference}; {@code sources.md} beside them says whose they are. */
record Reference(List<String> columns, List<List<String>> rows) {
    static Reference of(String name) {
        try (InputStream file = Reference.class.getResourceAsStream("/sillbook/reference/" + name + ".csv")) {
            String text = new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
            List<List<String>> lines =
                    text.lines().map(line -> Arrays.asList(line.split(",", -1))).toList();
            return new Reference(lines.get(0), lines.subList(1, lines.size()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Design design(String score, String... factors) {
        return Design.of(List.of(factors), observations(score, factors));
    }

    List<Observation> observations(String score, String... factors) {
        return rows.stream()
                .map(row -> Observation.of(
                        Double.parseDouble(row.get(columns.indexOf(score))),
                        Arrays.stream(factors)
                                .map(factor -> row.get(columns.indexOf(factor)))
                                .toList()))
                .toList();
    }

    /** The effects at these variances, which nobody had to find. */
    static Effects at(Design design, double residualVariance, double... variances) {
        double[] sds = Arrays.stream(variances).map(Math::sqrt).toArray();
        double residual = Math.sqrt(residualVariance);
        Equations equations =
                Equations.of(design, Arrays.stream(sds).map(sd -> sd / residual).toArray());
        Pool pool = new Pool(design);
        pool.add(1, sds, residual, equations, residualVariance);
        return pool.effects(
                java.util.OptionalDouble.of(equations.criterion(residualVariance)), java.util.OptionalDouble.empty());
    }
}
