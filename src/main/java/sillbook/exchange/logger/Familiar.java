// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.util.List;
import java.util.Optional;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Ids;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerProfile;
import sillbook.model.Place;
import sillbook.words.Heard;

/**
 * A look at a file by what is told of it now and, where it is like one that was taken in before, by what was told of that.
 *
 * @param told now
 * @param before what was told of files like it and is not told otherwise now
 * @param profile what is kept of files like it
 */
record Familiar(Look look, LoggerFormat told, LoggerFormat before, Optional<LoggerProfile> profile) {

    /**
     * Looks at the first lines of a file.
     *
     * @param profiles of the place where its thermometer lies
     */
    static Heard<Familiar> at(List<byte[]> lines, LoggerFormat told, List<LoggerProfile> profiles) {
        return profiles.stream()
                .flatMap(profile -> by(profile, lines, told).stream())
                .findFirst()
                .map(Heard::as)
                .orElseGet(() -> Look.at(lines, told)
                        .map(look -> new Familiar(look, told, LoggerFormat.OPEN, Optional.empty())));
    }

    /** A file without the device that was told before is still of that thermometer's sort; whose it is, is open again. */
    private static Optional<Familiar> by(LoggerProfile profile, List<byte[]> lines, LoggerFormat told) {
        LoggerFormat before = profile.format().without(told);
        return by(profile, lines, told, before)
                .or(() -> by(profile, lines, told, before.without(LoggerFormat.OPEN.withDevice(""))));
    }

    /** The lines are looked at as the profile would have it; only then can it be seen whether they are of its files. */
    private static Optional<Familiar> by(
            LoggerProfile profile, List<byte[]> lines, LoggerFormat told, LoggerFormat before) {
        return Look.at(lines, told.over(before))
                .value()
                .filter(look -> look.mark().equals(profile.mark()))
                .map(look -> new Familiar(look, told, before, Optional.of(profile)));
    }

    /** What keeps what is told now, for the next file like it; nothing where that was told before. */
    List<Edit> kept(Id<Place> place, Ids ids) {
        LoggerFormat known = profile.map(LoggerProfile::format).orElse(LoggerFormat.OPEN);
        LoggerFormat format = told.over(known);
        if (format.equals(known)) {
            return List.of();
        }
        Id<LoggerProfile> id = profile.map(LoggerProfile::id).orElseGet(ids::next);
        return List.of(new Edit.Put(new LoggerProfile(id, place, look.mark(), format)));
    }
}
