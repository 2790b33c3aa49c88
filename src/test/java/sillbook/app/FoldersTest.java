// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The folders of the XDG Base Directory Specification, version 0.8, and their likes elsewhere. */
class FoldersTest {
    private static final Path HOME = Path.of("/home/ada");

    @Test
    void withoutVariablesTheyLieInTheFoldersTheSpecificationNames() {
        Folders folders = Folders.of(Map.of(), "Linux", HOME);

        assertThat(folders.journal()).isEqualTo(HOME.resolve(".local/share/sillbook/journal.sillbook"));
        assertThat(folders.state()).isEqualTo(HOME.resolve(".local/state/sillbook"));
        assertThat(folders.cache()).isEqualTo(HOME.resolve(".cache/sillbook"));
    }

    @Test
    void aVariableThatIsSetIsFollowedOnEverySystem() {
        Map<String, String> set = Map.of(
                "XDG_DATA_HOME", "/data", "XDG_STATE_HOME", "/state", "XDG_CACHE_HOME", "/cache", "APPDATA", "/roam");
        for (String system : new String[] {"Linux", "Mac OS X", "Windows 11"}) {
            assertThat(Folders.of(set, system, HOME))
                    .isEqualTo(new Folders(
                            Path.of("/data/sillbook"), Path.of("/state/sillbook"), Path.of("/cache/sillbook")));
        }
    }

    @Test
    void anEmptyOrRelativeOneIsAsGoodAsNone() {
        Folders none = Folders.of(Map.of(), "Linux", HOME);

        assertThat(Folders.of(Map.of("XDG_DATA_HOME", ""), "Linux", HOME)).isEqualTo(none);
        assertThat(Folders.of(Map.of("XDG_DATA_HOME", "here"), "Linux", HOME)).isEqualTo(none);
        assertThat(Folders.of(Map.of("XDG_CACHE_HOME", "./cache"), "Linux", HOME))
                .isEqualTo(none);
    }

    @Test
    void macosAndWindowsHaveFoldersOfTheirOwn() {
        assertThat(Folders.of(Map.of(), "Mac OS X", HOME).journal())
                .isEqualTo(HOME.resolve("Library/Application Support/sillbook/journal.sillbook"));
        assertThat(Folders.of(Map.of(), "Mac OS X", HOME).cache()).isEqualTo(HOME.resolve("Library/Caches/sillbook"));
        assertThat(Folders.of(Map.of("LOCALAPPDATA", "/local"), "Windows 11", HOME)
                        .data())
                .isEqualTo(Path.of("/local/sillbook"));
        assertThat(Folders.of(Map.of(), "Windows 11", HOME).data()).isEqualTo(HOME.resolve("AppData/Local/sillbook"));
    }

    @Test
    void theCommandLineGoesBeforeTheVariableAndTheVariableBeforeTheUsualPlace() {
        Folders folders = Folders.of(Map.of(), "Linux", HOME);
        Map<String, String> variable = Map.of("SILLBOOK_JOURNAL", "/shared/winter.sillbook");

        assertThat(folders.journal(Optional.of("mine.sillbook"), variable)).isEqualTo(Path.of("mine.sillbook"));
        assertThat(folders.journal(Optional.empty(), variable)).isEqualTo(Path.of("/shared/winter.sillbook"));
        assertThat(folders.journal(Optional.empty(), Map.of("SILLBOOK_JOURNAL", "")))
                .isEqualTo(folders.journal());
        assertThat(folders.journal(Optional.empty(), Map.of())).isEqualTo(folders.journal());
    }
}
