// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.function.Function;
import sillbook.words.Heard;

/** A file that is read to its end, unless it is larger than any of its sort would be. */
final class WholeFile {
    /** Many times what any such file holds; what is larger is another sort of file. */
    private static final int MOST_BYTES = 4 * 1024 * 1024;

    private WholeFile() {}

    /** What is read from a file, or what is wrong with it. */
    static <T> Heard<T> read(Path file, Function<InputStream, Heard<T>> reading) {
        try (InputStream in = Files.newInputStream(file)) {
            return reading.apply(in);
        } catch (NoSuchFileException nowhere) {
            return Heard.not("not there", "There is no such file.");
        } catch (IOException failure) {
            return unreadable(failure);
        }
    }

    /**
     * The bytes of a stream.
     *
     * @param none what is never as large, as {@code no season}
     */
    static Heard<byte[]> bytes(InputStream in, String none) {
        try {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            return bytes.length > MOST_BYTES
                    ? Heard.not("too large", "It is larger than 4 MB, which " + none + " is. Name another.")
                    : Heard.as(bytes);
        } catch (IOException failure) {
            return unreadable(failure);
        }
    }

    private static <T> Heard<T> unreadable(IOException failure) {
        return Heard.not("not readable", "It could not be read: " + failure.getMessage() + ".");
    }
}
