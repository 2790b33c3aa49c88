// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.Optional;
import sillbook.model.Findings;
import sillbook.model.Happening;
import sillbook.model.Length;
import sillbook.words.Terms;

/** What happened, as JSON: its sort under {@code happened}, and beside it what that sort has. */
record HappeningJson(Named named) implements Happening.Cases<Fields> {

    static Fields of(Named named, Happening happening) {
        return happening.fold(new HappeningJson(named));
    }

    private static Fields happened(String sort) {
        return new Fields().text("happened", sort);
    }

    @Override
    public Fields potted(Happening.Potted potted) {
        return happened("potted");
    }

    @Override
    public Fields moved(Happening.Moved moved) {
        return happened("moved")
                .text("place", named.place(moved.place()))
                .text("stage", Terms.STAGES.say(moved.stage()));
    }

    @Override
    public Fields checked(Happening.Checked checked) {
        Findings found = checked.findings();
        return happened("checked")
                .text("moisture", found.moisture().map(Terms.MOISTURES::say))
                .flag("watered", found.watered())
                .text("water", found.water().map(Terms.WATERS::say))
                .text("roots", found.roots().map(Terms.ROOTS::say))
                .decimal("rootsCm", found.rootLength().map(Length::centimetres))
                .decimal("shootCm", found.shoot().map(Length::centimetres))
                .text("firmness", found.firmness().map(Terms.FIRMNESSES::say))
                .texts(
                        "growth",
                        found.growth().stream().sorted().map(Terms.GROWTHS::say).toList())
                .texts(
                        "troubles",
                        found.troubles().stream()
                                .sorted()
                                .map(Terms.TROUBLES::say)
                                .toList())
                .written("note", found.note());
    }

    @Override
    public Fields flowered(Happening.Flowered flowered) {
        Optional<String> variety = flowered.variety().map(named::variety);
        return happened("flowered")
                .text("point", Terms.BLOOM_POINTS.say(flowered.point()))
                .text("variety", variety);
    }

    @Override
    public Fields cared(Happening.Cared cared) {
        return happened("cared").text("care", Terms.CARES.say(cared.care()));
    }

    @Override
    public Fields closed(Happening.Closed closed) {
        return happened("closed").text("end", Terms.ENDS.say(closed.end())).written("note", closed.note());
    }

    @Override
    public Fields putOff(Happening.PutOff putOff) {
        return happened("put-off")
                .text("job", Terms.JOBS.say(putOff.job()))
                .day("until", putOff.until())
                .written("reason", putOff.reason());
    }

    @Override
    public Fields leftOut(Happening.LeftOut leftOut) {
        return happened("left-out").text("job", Terms.JOBS.say(leftOut.job())).written("reason", leftOut.reason());
    }

    @Override
    public Fields jotted(Happening.Jotted jotted) {
        return happened("jotted").text("text", jotted.text());
    }

    @Override
    public Fields displayed(Happening.Displayed displayed) {
        return happened("displayed").text("display", displayed.display());
    }
}
