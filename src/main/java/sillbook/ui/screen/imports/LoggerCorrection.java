// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.imports;

import java.util.List;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.ui.draw.Field;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.Said;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.form.OneField;
import sillbook.words.logger.Correction;
import sillbook.words.logger.Looked;
import sillbook.words.logger.UnderstoodWords.Topic;

/** Puts right one thing that a thermometer's file was understood as; the file is then looked at again. */
record LoggerCorrection(Id<Place> lyingAt, Looked looked, Topic topic, Field field) implements OneField {

    static LoggerCorrection of(Id<Place> lyingAt, Looked looked, Topic topic) {
        Correction correction = new Correction(topic, looked.told());
        return new LoggerCorrection(lyingAt, looked, topic, Field.of(correction.before(looked.understood())));
    }

    private Correction correction() {
        return new Correction(topic, looked.told());
    }

    @Override
    public String title() {
        return "Correct: " + topic.word();
    }

    @Override
    public String label() {
        return topic == Topic.SUSPICIOUS ? "Also" : "It is";
    }

    @Override
    public LoggerCorrection with(Field typed) {
        return new LoggerCorrection(lyingAt, looked, topic, typed);
    }

    @Override
    public Aside aside(State state) {
        List<String> advice = correction().advice();
        String second = correction().choices(looked.understood()).orElse(advice.get(1));
        return Aside.of("", advice.get(0), second);
    }

    @Override
    public List<Offer> offers(State state) {
        String words = field.text().strip();
        return List.of(Offer.of(Action.AGREE, () -> correct(state, words))
                .saying("correct it")
                .offIf(words.isEmpty(), "nothing is written yet"));
    }

    private Step correct(State state, String words) {
        return correction()
                .read(words)
                .fold(
                        told -> Step.to(state, new Effect.LookAtLogger(looked.file(), told, lyingAt)),
                        why -> Step.to(state.saying(Said.problem(why.sentence()))));
    }

    @Override
    public Step loggerLookedAt(State state, Message.LoggerLookedAt message) {
        State beneath = state.lifted();
        return beneath.top().loggerLookedAt(beneath, message);
    }
}
