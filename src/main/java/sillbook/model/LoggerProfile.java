// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.stream.Stream;
import sillbook.model.LoggerFormat.Separator;

/**
 * What the grower told of the files of a place's thermometer, kept so that the next one like them is read without asking.
 *
 * @param place where the thermometer lies
 * @param mark by which its files are known again
 * @param format what was told
 */
public record LoggerProfile(Id<LoggerProfile> id, Id<Place> place, Mark mark, LoggerFormat format)
        implements Entity<LoggerProfile> {

    /**
     * What files of one thermometer have in common.
     *
     * @param heading the line that names the columns, as it stands in the file; empty where there is none
     * @param separator what parts the cells of that line, or of the first reading
     * @param columns how many these are
     */
    public record Mark(String heading, Separator separator, int columns) {}

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.of(place);
    }
}
