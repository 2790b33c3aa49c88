// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.imports;

import sillbook.model.Id;
import sillbook.model.LoggerFormat;
import sillbook.model.Place;
import sillbook.ui.draw.Field;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.form.OneFile;

/** Asks for the file of the thermometer that lies at a place. */
public record LoggerFileSlip(Id<Place> lyingAt, String placeName, Field file) implements OneFile {

    public static LoggerFileSlip of(Place place) {
        return new LoggerFileSlip(place.id(), place.name(), Field.EMPTY);
    }

    @Override
    public String title() {
        return "Import a thermometer's file: " + placeName;
    }

    @Override
    public LoggerFileSlip with(Field typed) {
        return new LoggerFileSlip(lyingAt, placeName, typed);
    }

    @Override
    public Aside aside(State state) {
        return Aside.of(
                "",
                "Any file with an instant and a temperature line by line, just as it came.",
                "Nothing is kept before you have seen what it was understood as.");
    }

    @Override
    public Effect effect(State state, String name) {
        return new Effect.LookAtLogger(name, LoggerFormat.OPEN, lyingAt);
    }

    @Override
    public Step loggerLookedAt(State state, Message.LoggerLookedAt message) {
        return Step.to(state.laid(LoggerPreview.of(lyingAt, message.looked(), state)));
    }
}
