// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import sillbook.model.Journal;
import sillbook.model.Settings;
import sillbook.store.Steps;

/** A program killed while it writes: what it said was kept is kept, at most one act more, and all of it in order. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "there is no SIGKILL")
class KillTest {
    private static final int MOST_ACTS_BEFORE_THE_KILL = 60;

    @TempDir
    private Path folder;

    private final Random random = new Random(20);

    @Test
    void fiveKillsLoseNothing() throws Exception {
        kill(5);
    }

    @Test
    @Tag("slow")
    void fiftyKillsLoseNothing() throws Exception {
        kill(50);
    }

    @Test
    void aKillWhileReadingsAreTakenInLeavesNoneOfThem() throws Exception {
        killIntakes(3);
    }

    @Test
    @Tag("slow")
    void thirtyKillsWhileReadingsAreTakenIn() throws Exception {
        killIntakes(30);
    }

    private void killIntakes(int rounds) throws Exception {
        Path file = folder.resolve("readings.sillbook");
        Journal journal = Journal.of(List.of(Settings.initial(ZoneOffset.UTC), Writer.CELLAR));
        Writer.shelf(folder.resolve("cache")).begin(file, journal).close();
        for (int round = 0; round < rounds; round++) {
            Child child = Child.start(
                    "022", Writer.Readings.class, folder.resolve("cache").toString(), file.toString());
            for (int said = random.nextInt(20); said >= 0; said--) {
                child.line();
            }
            child.kill();
            try (Book book = Writer.shelf(folder.resolve("cache")).open(file)) {
                assertThat(book.readAll()).isEqualTo(journal);
                assertThat(book.steps(0, 9).all()).isZero();
                assertThat(book.chart(Writer.CELLAR.id(), Instant.EPOCH, Instant.EPOCH.plusSeconds(9_999), 9))
                        .isEmpty();
                assertThat(book.verify()).isEmpty();
            }
        }
    }

    private void kill(int rounds) throws Exception {
        Path file = folder.resolve("journal.sillbook");
        Writer.shelf(folder.resolve("cache")).begin(file).close();
        List<String> kept = new ArrayList<>();
        for (int round = 0; round < rounds; round++) {
            kept.addAll(writeAndKill(file, kept.size()));
            kept = requireKept(file, kept);
        }
        assertThat(kept).hasSizeGreaterThan(rounds);
    }

    /** Gives the acts that were said to be kept. */
    private List<String> writeAndKill(Path file, int first) throws Exception {
        Child child = Child.start(
                "022", Writer.class, folder.resolve("cache").toString(), file.toString(), Integer.toString(first));
        List<String> said = new ArrayList<>();
        for (int act = 1 + random.nextInt(MOST_ACTS_BEFORE_THE_KILL); act > 0; act--) {
            said.add(child.line());
        }
        said.addAll(child.kill());
        return said;
    }

    /** Gives the steps that are in the journal: those that were said to be kept, and perhaps one that was not yet. */
    private List<String> requireKept(Path file, List<String> said) {
        try (Book book = Writer.shelf(folder.resolve("cache")).open(file)) {
            List<String> steps = new ArrayList<>(book.steps(0, Integer.MAX_VALUE).stretch().stream()
                    .map(Steps.Listed::name)
                    .toList());
            Collections.reverse(steps);
            assertThat(steps).startsWith(said.toArray(String[]::new)).hasSizeBetween(said.size(), said.size() + 1);
            assertThat(book.verify()).isEmpty();
            assertThat(book.readAll().varieties().size()).isEqualTo(steps.size());
            assertThat(book.takeBack()).isEqualTo(new Result.Done(steps.get(steps.size() - 1), book.journal()));
            assertThat(book.putBack()).isInstanceOf(Result.Done.class);
            return steps;
        }
    }
}
