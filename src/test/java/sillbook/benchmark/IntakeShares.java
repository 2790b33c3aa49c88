// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** The parts of taking a file in, by {@link IntakeParts} under the Java settings that the program has. */
final class IntakeShares {
    /** As {@link IntakeParts} prints them. */
    private static final List<String> PARTS = List.of(
            "looking at the file",
            "reading and understanding it, on the other core",
            "keys, duplicates and marks, and waiting for what is read",
            "sums of days",
            "packing the original, on the other core",
            "step, sums at both ends, commit");

    /** Those that take no time of their own, as long as a core is free. */
    private static final Set<Integer> BESIDE = Set.of(1, 4);

    private static final int END = 5;

    private final Path program;
    private final Path folder;
    private final List<Sample> parts;
    private final Sample original = new Sample();
    private final Sample rest = new Sample();

    IntakeShares(String program, Path folder) {
        this.program = Path.of(program);
        this.folder = folder;
        this.parts = PARTS.stream().map(part -> new Sample()).toList();
    }

    /** One run with the original kept and one without, in nanoseconds; the end of the second one stands last. */
    long[] run(Path empty, Path file) throws IOException {
        long[] kept = taken(empty, file);
        long[] bare = taken(empty, file, "bare");
        long[] all = Arrays.copyOf(kept, kept.length + 1);
        all[kept.length] = bare[END];
        return all;
    }

    /** @param whole time of the whole import, run beside them */
    void add(long whole, long... run) {
        long known = 0;
        for (int part = 0; part < PARTS.size(); part++) {
            long time = part == END ? run[PARTS.size()] : run[part];
            parts.get(part).add(time);
            known += BESIDE.contains(part) ? 0 : time;
        }
        long keeping = Math.max(0, run[END] - run[PARTS.size()]);
        original.add(keeping);
        rest.add(whole - known - keeping);
    }

    /** Medians, in milliseconds. */
    String say() {
        List<String> said = new ArrayList<>();
        for (int part = 0; part < PARTS.size(); part++) {
            said.add(say(PARTS.get(part), parts.get(part)));
        }
        said.add(say("waiting for the original and keeping it", original));
        said.add(say("starting Java, opening the journal and the rest", rest));
        return String.join("; ", said);
    }

    private static String say(String part, Sample sample) {
        return String.format(Locale.ROOT, "%s %.0f ms", part, sample.medianMillis());
    }

    private long[] taken(Path empty, Path file, String... more) throws IOException {
        Path journal = Files.copy(empty, folder.resolve("parts.sillbook"), StandardCopyOption.REPLACE_EXISTING);
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                classes(),
                IntakeParts.class.getName(),
                folder.toString(),
                journal.toString(),
                file.toString()));
        command.addAll(List.of(more));
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), UTF_8).strip();
        return Stream.of(said.split(" ")).mapToLong(Long::parseLong).toArray();
    }

    private String classes() {
        Path own = Path.of(IntakeParts.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .getPath());
        return program.resolveSibling("../lib/sillbook.jar") + File.pathSeparator + own;
    }
}
