// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.ansi.UnixLikeTTYTerminal;
import java.io.BufferedOutputStream;
import java.io.File;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import sillbook.ui.draw.Size;

/**
 * The terminal this program was started in. The library keeps its alternate screen, hears of new sizes, and gives the terminal back when
 * the program ends in whatever way; settings, size and output are done here, because the library's own cost many processes and
 * writes, or ask the terminal and wait for its answer.
 */
final class TtyTerminal extends UnixLikeTTYTerminal {
    private static final int BUFFER = 64 * 1024;
    private static final File CONTROLLING = new File("/dev/tty");
    /**
     * Pastes come marked; text never runs on into the next line, whatever a terminal thinks of its width; arrows come as the key tables know
     * them.
     */
    private static final String BEGIN = "\u001B[?2004h\u001B[?7l\u001B[?1l";

    private static final String END = "\u001B[?2004l\u001B[?7h\u001B[?25h\u001B[m";

    private final InputStream keys;

    /** Not there yet while the library's constructor runs, which calls methods of this class. */
    private final @Nullable Stty stty;

    private boolean shown;

    TtyTerminal(Stty stty) throws IOException {
        this(stty, new FileInputStream(FileDescriptor.in), new FileOutputStream(FileDescriptor.out));
    }

    /** None at all: keys come from this stream, and what is sent is lost. */
    static TtyTerminal nowhere(InputStream keys) throws IOException {
        return new TtyTerminal(Stty.NONE, keys, OutputStream.nullOutputStream());
    }

    private TtyTerminal(Stty stty, InputStream keys, OutputStream screen) throws IOException {
        super(CONTROLLING, keys, new BufferedOutputStream(screen, BUFFER), StandardCharsets.UTF_8, CtrlCBehaviour.TRAP);
        this.keys = keys;
        this.stty = stty;
        onResized(stty.size().columns(), stty.size().rows());
    }

    InputStream keys() {
        return keys;
    }

    /** Calls back on a thread of the system, whenever the window has another size. */
    void onResize(Consumer<Size> listener) {
        addResizeListener((terminal, size) -> listener.accept(new Size(size.getColumns(), size.getRows())));
    }

    /** Sends bytes at once; nothing is sent to a terminal that was given back. */
    synchronized void send(byte[] bytes) throws IOException {
        if (shown) {
            writeToTerminal(bytes);
            flush();
        }
    }

    @Override
    public synchronized void enterPrivateMode() throws IOException {
        super.enterPrivateMode();
        shown = true;
        send(BEGIN.getBytes(StandardCharsets.US_ASCII));
    }

    @Override
    public synchronized void exitPrivateMode() throws IOException {
        send(END.getBytes(StandardCharsets.US_ASCII));
        shown = false;
        super.exitPrivateMode();
        flush();
    }

    /** Gives the terminal back, waits in the background, and takes it again. */
    void suspend() throws IOException {
        exitPrivateMode();
        restoreTerminalSettings();
        Stty.stopUntilContinued();
        if (stty != null) {
            stty.makeRaw();
        }
        enterPrivateMode();
    }

    @Override
    protected TerminalSize findTerminalSize() {
        Size size = Stty.currentSize();
        return new TerminalSize(size.columns(), size.rows());
    }

    @Override
    protected void restoreTerminalSettings() {
        if (stty != null) {
            stty.restore();
        }
    }

    /** Done already, as are the three below: {@link Stty#takeTerminal}. */
    @Override
    protected void saveTerminalSettings() {}

    @Override
    protected void keyEchoEnabled(boolean enabled) {}

    @Override
    protected void canonicalMode(boolean enabled) {}

    @Override
    protected void keyStrokeSignalsEnabled(boolean enabled) {}
}
