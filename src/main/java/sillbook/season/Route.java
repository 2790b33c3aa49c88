// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Stage;

/**
 * From where to where a job takes a pot.
 *
 * @param from where it stands; empty when that is not known
 * @param to a place that would do; empty when the pot stays, or no place is known
 * @param stage the stage it is in once the job is done
 */
public record Route(Optional<Id<Place>> from, Optional<Destination> to, Stage stage) {}
