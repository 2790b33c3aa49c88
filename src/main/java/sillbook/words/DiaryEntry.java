// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Entity;
import sillbook.model.Id;
import sillbook.model.Pot;

/**
 * One entry of the diary as it is read: what was written down for several pots at once is one.
 *
 * @param day when it was so
 * @param writtenOn the day it was written down, where that is another
 * @param pots those it is about, by label; none when it is about something else
 * @param says what it says, with the place or variety it is about when it is about one
 * @param found more words it is found by, in small letters without accents
 * @param written what stands in the journal for it
 */
public record DiaryEntry(
        Day day,
        Optional<LocalDate> writtenOn,
        List<Id<Pot>> pots,
        String says,
        String found,
        List<Entity<?>> written) {
    public DiaryEntry {
        pots = List.copyOf(pots);
        written = List.copyOf(written);
    }
}
