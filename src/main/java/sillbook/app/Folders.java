// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where files lie when nobody says: by the XDG Base Directory Specification 0.8, on macOS and Windows in the folders
 * usual there. An XDG variable that is set goes first on every system; one that is empty or relative counts as not set.
 *
 * @param data holds the journal
 * @param state holds what a crash left to say
 * @param cache holds what can be made again
 */
public record Folders(Path data, Path state, Path cache) {
    private static final String PROGRAM = "sillbook";
    private static final String JOURNAL = "journal.sillbook";

    /**
     * Reads them off the surroundings; touches no file.
     *
     * @param system the name the system gives itself, as {@code Mac OS X}
     */
    public static Folders of(Map<String, String> environment, String system, Path home) {
        Folders usual = usual(environment, system.toLowerCase(Locale.ROOT), home);
        return new Folders(
                absolute(environment, "XDG_DATA_HOME").orElse(usual.data).resolve(PROGRAM),
                absolute(environment, "XDG_STATE_HOME").orElse(usual.state).resolve(PROGRAM),
                absolute(environment, "XDG_CACHE_HOME").orElse(usual.cache).resolve(PROGRAM));
    }

    private static Folders usual(Map<String, String> environment, String system, Path home) {
        if (system.startsWith("mac")) {
            Path support = home.resolve("Library/Application Support");
            return new Folders(support, support, home.resolve("Library/Caches"));
        }
        if (system.startsWith("windows")) {
            Path local = absolute(environment, "LOCALAPPDATA").orElse(home.resolve("AppData/Local"));
            return new Folders(local, local, local);
        }
        return new Folders(home.resolve(".local/share"), home.resolve(".local/state"), home.resolve(".cache"));
    }

    private static Optional<Path> absolute(Map<String, String> environment, String variable) {
        return Optional.ofNullable(environment.get(variable))
                .filter(value -> !value.isEmpty())
                .map(Path::of)
                .filter(Path::isAbsolute);
    }

    /** The journal that is opened when none is named. */
    public Path journal() {
        return data.resolve(JOURNAL);
    }

    /**
     * The journal that is meant: the one named on the command line, else the one of the variable
     * {@code SILLBOOK_JOURNAL}, else the usual one.
     */
    public Path journal(Optional<String> named, Map<String, String> environment) {
        return named.or(() -> Optional.ofNullable(environment.get("SILLBOOK_JOURNAL")))
                .filter(name -> !name.isEmpty())
                .map(Path::of)
                .orElseGet(this::journal);
    }
}
