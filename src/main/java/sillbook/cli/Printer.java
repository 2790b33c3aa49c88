// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sillbook.text.Ascii;
import sillbook.text.Safe;
import sillbook.words.Warned;

/**
 * Both outputs of a command. Every line goes through the gate of {@code text}; where the locale does not speak UTF-8 it
 * comes out as ASCII.
 */
final class Printer {
    /** No name of a file, and nothing a sentence quotes for good reason, is as long. */
    private static final Pattern ENDLESS = Pattern.compile("(\\S{60})\\S{240,}|('[^']{60})[^']{240,}");

    private final OutputStream out;
    private final OutputStream err;
    private final UnaryOperator<String> gate;

    Printer(OutputStream out, OutputStream err, Map<String, String> environment) {
        this.out = out;
        this.err = err;
        this.gate = speaksUtf8(environment) ? Safe::text : Ascii::of;
    }

    /** By the first of these variables that says anything, as POSIX has it. */
    private static boolean speaksUtf8(Map<String, String> environment) {
        Optional<String> locale = Stream.of("LC_ALL", "LC_CTYPE", "LANG")
                .map(name -> environment.getOrDefault(name, ""))
                .filter(value -> !value.isEmpty())
                .findFirst();
        return locale.map(name -> name.toLowerCase(Locale.ROOT))
                .filter(name -> name.contains("utf-8") || name.contains("utf8"))
                .isPresent();
    }

    /** A line of data. */
    void line(String text) {
        write(out, gate.apply(text) + "\n");
    }

    void lines(Iterable<String> lines) {
        lines.forEach(this::line);
    }

    /** A JSON document; its text escapes what a terminal must not see. */
    void json(String document) {
        write(out, document + "\n");
    }

    /** A file's text, as it stands. */
    void document(String text) {
        write(out, text);
    }

    /** Words about the work. */
    void say(String sentence) {
        write(err, gate.apply(shortened(sentence)) + "\n");
    }

    /** What was typed comes back in sentences; where it is endless, its beginning does. */
    private static String shortened(String sentence) {
        return ENDLESS.matcher(sentence).replaceAll("$1$2...");
    }

    void warn(Warned warning) {
        say("! " + warning.says());
    }

    private static void write(OutputStream stream, String text) {
        try {
            stream.write(text.getBytes(UTF_8));
            stream.flush();
        } catch (IOException gone) {
            throw new OutputClosed(gone);
        }
    }

    /** Nothing more can be printed: whoever read the output has gone, as {@code head} does, or there is no room for it. */
    static final class OutputClosed extends UncheckedIOException {
        private static final long serialVersionUID = 1L;
        private static final String NOBODY_READS = "Broken pipe";

        private final String reason;

        OutputClosed(IOException cause) {
            super("the output was closed", cause);
            this.reason = String.valueOf(cause.getMessage());
        }

        /** Empty when it is nothing to tell: nobody wanted more. */
        Optional<String> sentence() {
            return reason.equals(NOBODY_READS)
                    ? Optional.empty()
                    : Optional.of("The output could not be written: " + reason + ". Make room, or print elsewhere.");
        }
    }
}
