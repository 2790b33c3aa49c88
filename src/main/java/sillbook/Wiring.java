// SPDX-License-Identifier: Apache-2.0
package sillbook;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Map;
import sillbook.app.Bookshelf;
import sillbook.app.DayReckoning;
import sillbook.app.Folders;
import sillbook.app.Forecast;
import sillbook.app.demo.Demo;
import sillbook.handbook.Handbook;
import sillbook.store.sqlite.SqliteStorage;

/**
 * The parts that the screens and the commands share, put together. Nothing is opened, and next to nothing loaded, before
 * it is asked for.
 */
record Wiring(Map<String, String> environment, Folders folders) {

    static Wiring ofThisProgram() {
        Map<String, String> environment = System.getenv();
        Path home = Path.of(System.getProperty("user.home"));
        return new Wiring(environment, Folders.of(environment, System.getProperty("os.name"), home));
    }

    /** Journals under the machine's own clock. */
    Bookshelf shelf() {
        return shelf(clock());
    }

    /** Journals under a clock that goes on from the demo's moment. */
    Bookshelf demoShelf() {
        Clock machine = Clock.system(Demo.ZONE);
        return shelf(Clock.offset(machine, Duration.between(machine.instant(), Demo.MOMENT)));
    }

    Clock clock() {
        return Clock.system(ZoneId.systemDefault());
    }

    private Bookshelf shelf(Clock clock) {
        return new Bookshelf(
                new SqliteStorage(folders.cache(), new DayReckoning()),
                clock,
                Bookshelf.randomIds(),
                Forecast.by(Handbook.standard()));
    }
}
