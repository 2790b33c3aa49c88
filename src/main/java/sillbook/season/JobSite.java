// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Place;
import sillbook.model.Stage;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Window;

/** A pot and what stands around it, where its jobs are put together. */
record JobSite(Foretold pot, Neighbours neighbours) {
    LocalDate today() {
        return pot.today();
    }

    JobDraft draft(JobKind kind, Window window, Stage stage) {
        return new JobDraft(kind, pot, window, new Route(here(), destination(stage), stage));
    }

    /** Only a move has a destination. */
    Optional<Destination> destination(Stage stage) {
        return pot.pins()
                .meant()
                .flatMap(course -> neighbours.meant(course, stage, here()))
                .or(() -> neighbours.suggest(pot.life().pot(), stage, here()));
    }

    Optional<Id<Place>> here() {
        return pot.life().stands().map(Stay::place);
    }

    Window window(Milestone milestone) {
        return Optional.ofNullable(pot.windows().get(milestone)).orElseThrow();
    }
}
