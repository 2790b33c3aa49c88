// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * A program in a pseudo-terminal, driven byte by byte. The terminal is lent by util-linux {@code script}, so that a
 * program written in any language is measured alike.
 */
final class PseudoTerminal implements AutoCloseable {
    private static final int CHUNK = 1 << 16;
    /** A reader that never rests takes one of the cores the program needs. */
    private static final long POLL_NANOS = 50_000;

    private final Process process;
    private final InputStream output;
    private final OutputStream keys;
    private final byte[] chunk = new byte[CHUNK];

    private PseudoTerminal(Process process) {
        this.process = process;
        this.output = process.getInputStream();
        this.keys = process.getOutputStream();
    }

    /** Starts a shell command in a terminal of that size. */
    static PseudoTerminal start(String command, int columns, int rows) {
        String sized = "stty rows " + rows + " cols " + columns + "; exec " + command;
        ProcessBuilder builder = new ProcessBuilder("script", "-qfec", sized, "/dev/null");
        builder.redirectErrorStream(true);
        builder.environment().putAll(Map.of("TERM", "xterm-256color", "LC_ALL", "C.UTF-8"));
        try {
            return new PseudoTerminal(builder.start());
        } catch (IOException failure) {
            throw new UncheckedIOException("no pseudo-terminal: is util-linux's script installed?", failure);
        }
    }

    void press(String bytes) {
        try {
            keys.write(bytes.getBytes(StandardCharsets.UTF_8));
            keys.flush();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** What a program wrote until it was still: how many bytes, and when the last of them came. */
    record Burst(int length, long lastByteNanos) {}

    /** Reads until nothing has come for {@code quietMillis}, at most {@code limitMillis}. */
    Burst untilStill(long quietMillis, long limitMillis) {
        int length = 0;
        long limit = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(limitMillis);
        long last = System.nanoTime();
        boolean any = false;
        try {
            while (System.nanoTime() < limit) {
                if (output.available() > 0) {
                    int read = output.read(chunk, 0, CHUNK);
                    last = System.nanoTime();
                    any = true;
                    length += Math.max(read, 0);
                } else if (any && System.nanoTime() - last > TimeUnit.MILLISECONDS.toNanos(quietMillis)) {
                    break;
                } else {
                    LockSupport.parkNanos(POLL_NANOS);
                }
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return new Burst(length, last);
    }

    /** The moment these bytes had come, in nanoseconds of the same clock as {@link System#nanoTime()}. */
    long untilSaid(byte[] awaited, long limitMillis) {
        CompletableFuture<Void> limit = CompletableFuture.runAsync(
                this::end, CompletableFuture.delayedExecutor(limitMillis, TimeUnit.MILLISECONDS));
        int matched = 0;
        try {
            for (int read = output.read(chunk); read >= 0; read = output.read(chunk)) {
                for (int at = 0; at < read; at++) {
                    matched = chunk[at] == awaited[matched] ? matched + 1 : chunk[at] == awaited[0] ? 1 : 0;
                    if (matched == awaited.length) {
                        return System.nanoTime();
                    }
                }
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } finally {
            limit.cancel(false);
        }
        throw new IllegalStateException("the program did not say what was awaited");
    }

    /** Reads to the end of what the program says, which has been asked to end: then it has tidied up behind it. */
    void untilEnded(long limitMillis) {
        CompletableFuture<Void> limit = CompletableFuture.runAsync(
                this::end, CompletableFuture.delayedExecutor(limitMillis, TimeUnit.MILLISECONDS));
        try {
            while (output.read(chunk) >= 0) {
                // What it still draws is nobody's concern.
            }
            if (process.waitFor() != 0) {
                throw new IllegalStateException("the program did not end by itself");
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        } finally {
            limit.cancel(false);
        }
    }

    private void end() {
        List.copyOf(process.descendants().toList()).forEach(ProcessHandle::destroy);
        process.destroy();
    }

    @Override
    public void close() {
        end();
        try {
            if (!process.waitFor(2, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
