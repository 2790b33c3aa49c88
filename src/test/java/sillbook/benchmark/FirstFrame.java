// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import javax.tools.ToolProvider;

/** From the start of a process to its first picture, beside a Java program that only says hello. */
final class FirstFrame {
    private static final int RUNS = 15;
    /** Programs here mark the end of a frame with the end of a synchronized update. */
    private static final String FRAME_END = "\u001b[?2026l";

    /** Asks to leave, and answers that it is meant. */
    private static final List<String> LEAVING = List.of("q", "\r");

    private static final long STILL_MILLIS = 100;
    private static final long LIMIT_MILLIS = TimeUnit.SECONDS.toMillis(20);

    private final String program;
    private final Path folder;

    FirstFrame(String program, Path folder) {
        this.program = program;
        this.folder = folder;
    }

    /** The two in turn, one warm-up each; printed as medians and their ratio. */
    String measure(Path journal) {
        Path hello = compileHello();
        Sample peer = new Sample();
        Sample own = new Sample();
        for (int run = 0; run <= RUNS; run++) {
            long helloTime = untilSaid("java -cp " + hello + " Hello", "hello");
            long ownTime = thenLeft(program, journal);
            if (run > 0) {
                peer.add(helloTime);
                own.add(ownTime);
            }
        }
        return "first frame     " + own.say() + "\n  hello world   " + peer.say()
                + String.format(Locale.ROOT, "%n  ratio         %.2f", own.medianMillis() / peer.medianMillis());
    }

    /** From the start of the program on a journal to its first picture, in nanoseconds; then it is left, as a grower leaves it. */
    static long thenLeft(String program, Path journal) {
        long begin = System.nanoTime();
        try (PseudoTerminal terminal = start(program + " --journal " + journal)) {
            long time = untilFrame(terminal) - begin;
            for (String key : LEAVING) {
                // The rest of the journal is drawn too, once it is read.
                terminal.untilStill(STILL_MILLIS, LIMIT_MILLIS);
                terminal.press(key);
            }
            terminal.untilEnded(LIMIT_MILLIS);
            return time;
        }
    }

    /** The same, but the program is killed: the next start finds the journal open. */
    static long thenKilled(String program, Path journal) {
        return untilSaid(program + " --journal " + journal, FRAME_END);
    }

    private static long untilSaid(String command, String sign) {
        byte[] awaited = sign.getBytes(StandardCharsets.UTF_8);
        long begin = System.nanoTime();
        try (PseudoTerminal terminal = start(command)) {
            return terminal.untilSaid(awaited, LIMIT_MILLIS) - begin;
        }
    }

    private static long untilFrame(PseudoTerminal terminal) {
        return terminal.untilSaid(FRAME_END.getBytes(StandardCharsets.UTF_8), LIMIT_MILLIS);
    }

    private static PseudoTerminal start(String command) {
        return PseudoTerminal.start(command, 120, 40);
    }

    private Path compileHello() {
        try {
            Path source = folder.resolve("Hello.java");
            Files.writeString(
                    source, "class Hello { public static void main(String[] a) { System.out.println(\"hello\"); } }");
            int failed = ToolProvider.getSystemJavaCompiler()
                    .run(null, null, null, "-d", folder.toString(), source.toString());
            if (failed != 0) {
                throw new IllegalStateException("the hello world does not compile");
            }
            return folder;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
