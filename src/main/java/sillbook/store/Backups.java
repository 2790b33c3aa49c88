// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Season;

/**
 * The backups of a journal, in a folder beside it: {@code journal.sillbook-backups}. Each is named by the day it was
 * made, or by the form the journal had before it was brought up to date.
 */
public record Backups(Path folder) {
    private static final String ENDING = ".sillbook";
    private static final Pattern OF_A_DAY = Pattern.compile("(\\d{4}-\\d\\d-\\d\\d)\\.sillbook");
    private static final int NEWEST_KEPT = 10;

    public static Backups of(Path journal) {
        return new Backups(journal.resolveSibling(journal.getFileName() + "-backups"));
    }

    public Path ofDay(LocalDate day) {
        return folder.resolve(day + ENDING);
    }

    /** The copy made before a journal of that form is brought up to date. */
    public Path ofForm(int version) {
        return folder.resolve("form-" + version + ENDING);
    }

    /** The copy made last. */
    public Optional<Path> newest() {
        return files().stream()
                .max(Comparator.comparingLong(file -> file.toFile().lastModified()));
    }

    /** Deletes the copies made on a day, but for the ten newest and the first of each season. */
    public void thinOut(Function<LocalDate, Season> seasonOf) {
        List<LocalDate> days = days();
        Set<LocalDate> kept = new HashSet<>(days.subList(Math.max(0, days.size() - NEWEST_KEPT), days.size()));
        kept.addAll(firstOfEach(days, seasonOf));
        days.stream().filter(day -> !kept.contains(day)).map(this::ofDay).forEach(Backups::delete);
    }

    private static Collection<LocalDate> firstOfEach(List<LocalDate> days, Function<LocalDate, Season> seasonOf) {
        return days.stream()
                .collect(Collectors.toMap(seasonOf, Function.identity(), (first, later) -> first))
                .values();
    }

    private List<LocalDate> days() {
        return files().stream()
                .map(file -> OF_A_DAY.matcher(file.getFileName().toString()))
                .filter(name -> name.matches())
                .map(name -> LocalDate.parse(name.group(1)))
                .sorted()
                .toList();
    }

    /** None when there is no folder, or it cannot be looked into. */
    private List<Path> files() {
        File[] files = folder.toFile().listFiles((folder, name) -> name.endsWith(ENDING));
        return files == null ? List.of() : Stream.of(files).map(File::toPath).toList();
    }

    private static void delete(Path copy) {
        try {
            Files.deleteIfExists(copy);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
