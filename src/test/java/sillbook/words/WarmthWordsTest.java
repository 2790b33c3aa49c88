// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Id;
import sillbook.season.RoomWarmth;
import sillbook.season.RoomWarmth.Lasting;
import sillbook.season.RoomWarmth.SoFar;

class WarmthWordsTest {
    private final WarmthWords words = new WarmthWords(Shelves.bench().journal());

    private static RoomWarmth bloom(double celsius, boolean isRead, double days, double least, double most) {
        return new RoomWarmth(
                Optional.empty(), Optional.of(new Lasting(new Id<>(1, 1), celsius, isRead, 10, days, least, most)));
    }

    @Test
    void aBloomInACoolRoom() {
        assertThat(words.say(bloom(13, true, 15.8, 14.1, 17.9)))
                .containsExactly(
                        "At 13 C as read there, a bloom of 10 days lasts about 16 (14 to 18): a rough rule (?), taken from 18 C.");
        assertThat(words.say(bloom(17, false, 10.9, 10.7, 11.2)))
                .containsExactly(
                        "At 17 C as usual there, a bloom of 10 days lasts about 11: a rough rule (?), taken from 18 C.");
    }

    @Test
    void nothingIsSaidOfARoomThatChangesNothing() {
        assertThat(words.say(bloom(18, true, 10, 10, 10))).isEmpty();
        assertThat(words.say(new RoomWarmth(Optional.empty(), Optional.empty())))
                .isEmpty();
    }

    @Test
    void warmthSoFar() {
        assertThat(words.say(new RoomWarmth(Optional.of(new SoFar(27.2, 2, 4)), Optional.empty())))
                .containsExactly("27 degree-days above 4.4 C since it came in, 2 of 4 days read. "
                        + "That base is published of garden tulips; how many a pot needs is not.");
        assertThat(words.say(new RoomWarmth(Optional.of(new SoFar(54.4, 4, 4)), Optional.empty())))
                .containsExactly("54 degree-days above 4.4 C since it came in. "
                        + "That base is published of garden tulips; how many a pot needs is not.");
    }
}
