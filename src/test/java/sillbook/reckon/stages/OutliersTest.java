// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class OutliersTest {
    private static final NormalInverseGamma TULIP = NormalInverseGamma.before(new ThreePoints(16, 21, 28));

    @Test
    void a_slip_of_the_pen_among_lengths_that_agree_is_named() {
        assertThat(Outliers.among(List.of(20.0, 22.0, 40.0, 21.0, 23.0), TULIP)).containsExactly(2);
    }

    @Test
    void lengths_that_agree_with_each_other_but_not_with_the_books_are_not_named() {
        assertThat(Outliers.among(List.of(33.0, 35.0, 34.0, 36.0), TULIP)).isEmpty();
    }

    @Test
    void one_length_is_held_against_what_was_believed_before() {
        assertThat(Outliers.among(List.of(27.0), TULIP)).isEmpty();
        assertThat(Outliers.among(List.of(40.0), TULIP)).containsExactly(0);
        assertThat(Outliers.among(List.of(), TULIP)).isEmpty();
    }

    @Test
    void of_many_lengths_of_one_sort_hardly_any_is_named_by_chance() {
        Random random = new Random(6);
        List<Double> many = IntStream.range(0, 10_000)
                .mapToObj(i -> 21 + 2 * random.nextGaussian())
                .toList();

        assertThat(Outliers.among(many, TULIP)).hasSizeLessThanOrEqualTo(1);
    }

    @Test
    void a_sample_without_one_of_its_days_is_the_sample_of_the_others() {
        Sample rest = Sample.of(List.of(19.0, 23.0, 22.0, 30.0)).without(30);
        Sample others = Sample.of(List.of(19.0, 23.0, 22.0));

        assertThat(rest.count()).isEqualTo(3);
        assertThat(rest.mean()).isEqualTo(others.mean());
        assertThat(rest.squares()).isCloseTo(others.squares(), org.assertj.core.api.Assertions.within(1e-9));
    }
}
