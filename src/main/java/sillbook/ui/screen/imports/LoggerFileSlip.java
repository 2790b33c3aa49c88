// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.imports;

import java.util.List;
import sillbook.model.Id;
import sillbook.model.LoggerFormat;
import sillbook.model.Place;
import sillbook.ui.draw.Field;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.form.OneField;

/** Asks for the file of the thermometer that lies at a place. */
public record LoggerFileSlip(Id<Place> lyingAt, String placeName, Field file) implements OneField {

    public static LoggerFileSlip of(Place place) {
        return new LoggerFileSlip(place.id(), place.name(), Field.EMPTY);
    }

    @Override
    public String title() {
        return "Import a thermometer's file: " + placeName;
    }

    @Override
    public String label() {
        return "File";
    }

    @Override
    public Field field() {
        return file;
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
    public List<Offer> offers(State state) {
        String name = file.text().strip();
        return List.of(Offer.of(
                        Action.AGREE, () -> Step.to(state, new Effect.LookAtLogger(name, LoggerFormat.OPEN, lyingAt)))
                .saying("look at it")
                .offIf(name.isEmpty(), "no file is named yet"));
    }

    @Override
    public Step loggerLookedAt(State state, Message.LoggerLookedAt message) {
        return Step.to(state.laid(LoggerPreview.of(lyingAt, message.looked(), state)));
    }
}
