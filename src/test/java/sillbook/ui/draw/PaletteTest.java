// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class PaletteTest {
    private static final int BLACK = 0x000000;
    private static final int WHITE = 0xFFFFFF;

    /** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
    private static double contrast(int one, int other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
    }

    private static double linear(int channel) {
        double value = (channel & 0xFF) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }

    /** The fixed table of 256: a cube of six steps from 16 on, then 24 greys. */
    private static int rgb(Colour colour) {
        if (colour instanceof Colour.Direct direct) {
            return direct.rgb();
        }
        int number = ((Colour.Indexed) colour).number();
        if (number >= 232) {
            return (8 + 10 * (number - 232)) * 0x010101;
        }
        int cube = number - 16;
        return step(cube / 36) << 16 | step(cube / 6 % 6) << 8 | step(cube % 6);
    }

    private static int step(int sixth) {
        return sixth == 0 ? 0 : 55 + 40 * sixth;
    }

    static Stream<Arguments> coloured() {
        return Stream.of(
                Arguments.of(Ground.DARK, ColourDepth.DIRECT_24_BIT, List.of(BLACK, 0x1E1E1E)),
                Arguments.of(Ground.DARK, ColourDepth.INDEXED_256, List.of(BLACK, 0x1E1E1E)),
                Arguments.of(Ground.LIGHT, ColourDepth.DIRECT_24_BIT, List.of(WHITE, 0xFAF8F3)),
                Arguments.of(Ground.LIGHT, ColourDepth.INDEXED_256, List.of(WHITE, 0xFAF8F3)),
                Arguments.of(Ground.EITHER, ColourDepth.DIRECT_24_BIT, List.of(BLACK, WHITE)));
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("coloured")
    void everyColourReadsOnItsBackgroundAndOnTheWash(Ground ground, ColourDepth depth, List<Integer> backgrounds) {
        Palette palette = Palette.of(ground, depth);
        Colour wash = palette.paint(Style.INK.withWash()).background();
        IntStream washed = wash == Colour.OWN ? IntStream.empty() : IntStream.of(rgb(wash));
        List<Integer> all = Stream.concat(backgrounds.stream(), washed.boxed()).toList();
        for (Role role : Role.values()) {
            Colour colour = palette.paint(Style.of(role)).foreground();
            assertThat(colour == Colour.OWN).isEqualTo(role == Role.INK);
            if (colour != Colour.OWN) {
                assertThat(all)
                        .allSatisfy(back -> assertThat(contrast(rgb(colour), back))
                                .as("%s on %06X", role, back)
                                .isGreaterThanOrEqualTo(4.5));
            }
        }
    }

    @Test
    void theFormulaIsTheOneOfThePublishedExtremes() {
        assertThat(contrast(BLACK, WHITE)).isEqualTo(21.0);
        assertThat(contrast(0x767676, WHITE)).isBetween(4.54, 4.55);
    }

    @ParameterizedTest
    @EnumSource(ColourDepth.class)
    void withoutColoursOnlyWeightIsLeft(ColourDepth depth) {
        Palette palette = Palette.of(Ground.NONE, depth);
        for (Role role : Role.values()) {
            Paint paint = palette.paint(Style.of(role).withWash());
            assertThat(paint.foreground()).isEqualTo(Colour.OWN);
            assertThat(paint.background()).isEqualTo(Colour.OWN);
            assertThat(paint.dim()).isEqualTo(role == Role.PENCIL);
            assertThat(paint.bold()).isEqualTo(role == Role.RUST);
        }
    }

    @Test
    void anUnknownBackgroundGetsColoursOnlyWhereTheyAreOursToChoose() {
        Style frost = Style.of(Role.FROST);
        assertThat(Palette.of(Ground.EITHER, ColourDepth.INDEXED_256)
                        .paint(frost)
                        .foreground())
                .isEqualTo(Colour.OWN);
        assertThat(Palette.of(Ground.EITHER, ColourDepth.SIXTEEN).paint(frost).foreground())
                .isEqualTo(Colour.OWN);
        assertThat(Palette.of(Ground.EITHER, ColourDepth.DIRECT_24_BIT)
                        .paint(frost)
                        .foreground())
                .isEqualTo(new Colour.Direct(0x2F74D0));
    }

    @Test
    void sixteenColoursAreBrightOnDarkAndDeepOnLight() {
        Style frost = Style.of(Role.FROST);
        assertThat(Palette.of(Ground.DARK, ColourDepth.SIXTEEN).paint(frost).foreground())
                .isEqualTo(new Colour.Basic(14));
        assertThat(Palette.of(Ground.LIGHT, ColourDepth.SIXTEEN).paint(frost).foreground())
                .isEqualTo(new Colour.Basic(4));
        Paint leaf = Palette.of(Ground.LIGHT, ColourDepth.SIXTEEN)
                .paint(Style.of(Role.LEAF).withWash());
        assertThat(leaf.foreground()).isEqualTo(Colour.OWN);
        assertThat(leaf.background()).isEqualTo(Colour.OWN);
    }

    @Test
    void pencilIsDimOnlyWhereNoColourSaysIt() {
        assertThat(Palette.of(Ground.DARK, ColourDepth.SIXTEEN)
                        .paint(Style.PENCIL)
                        .dim())
                .isTrue();
        assertThat(Palette.of(Ground.DARK, ColourDepth.INDEXED_256)
                        .paint(Style.PENCIL)
                        .dim())
                .isFalse();
        assertThat(Palette.of(Ground.NONE, ColourDepth.NONE)
                        .paint(Style.PENCIL.withBold())
                        .dim())
                .isFalse();
    }
}
