// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Journal;
import sillbook.model.PottingMix;
import sillbook.model.Purchase;
import sillbook.model.SeasonPlan;
import sillbook.plan.Supplies;
import sillbook.plan.Supplies.Bulbs;
import sillbook.plan.Supplies.Leftover;
import sillbook.plan.Supplies.Mix;
import sillbook.plan.Supplies.Pots;
import sillbook.words.Provisos;
import sillbook.words.plan.SuppliesLines;

/** What a plan takes, as JSON. */
public final class SuppliesJson {
    private final Named named;

    private SuppliesJson(Journal journal) {
        this.named = new Named(journal);
    }

    /** The document of {@code sillbook supplies --json}. */
    public static String write(
            Journal journal, SeasonPlan plan, Supplies supplies, List<String> cautions, Provisos provisos) {
        SuppliesJson json = new SuppliesJson(journal);
        Fields fields = new Fields()
                .text("season", json.named.season(plan.season()))
                .text("plan", plan.name())
                .list("bulbs", SuppliesLines.inOrder(supplies), json::bulbs)
                .number("wanting", supplies.wanting())
                .list("cost", supplies.cost(), MoneyJson::of)
                .number("withoutPrice", supplies.withoutPrice())
                .list("containers", supplies.containers(), json::pots)
                .object("pottingMix", supplies.mix(), json::mix)
                .number("labels", supplies.labels())
                .list("leftOver", supplies.leftOver(), json::leftOver)
                .texts("cautions", cautions);
        return Answer.write(fields, provisos);
    }

    private Fields bulbs(Bulbs bulbs) {
        return new Fields()
                .written("supplier", bulbs.supplier())
                .text("variety", named.variety(bulbs.variety()))
                .written("grade", bulbs.grade())
                .text("state", SuppliesLines.STATES.say(bulbs.state()))
                .number("bulbs", bulbs.bulbs())
                .number("pots", bulbs.pots())
                .number("wanting", bulbs.wanting())
                .object("cost", bulbs.cost(), MoneyJson::of)
                .day("orderBy", bulbs.orderBy())
                .day("potBy", bulbs.potBy());
    }

    private Fields pots(Pots pots) {
        return new Fields()
                .text(
                        "container",
                        named.journal().containers().get(pots.container()).name())
                .number("needed", pots.needed())
                .number("free", pots.free())
                .number("toWash", pots.toWash())
                .number("toBuy", pots.toBuy());
    }

    private Fields mix(Mix mix) {
        Optional<PottingMix> known =
                mix.mix().map(id -> named.journal().pottingMixes().get(id));
        return new Fields()
                .number("litres", mix.litres())
                .text("name", known.map(PottingMix::name))
                .list("parts", parts(mix, known), part -> part)
                .number("potsWithoutSize", mix.withoutSize());
    }

    private static List<Fields> parts(Mix mix, Optional<PottingMix> known) {
        List<Fields> parts = new ArrayList<>();
        for (int part = 0; part < mix.parts().size(); part++) {
            int number = part;
            parts.add(new Fields()
                    .text("material", known.map(one -> one.parts().get(number).material()))
                    .number("litres", mix.parts().get(part)));
        }
        return parts;
    }

    private Fields leftOver(Leftover left) {
        Purchase purchase = named.journal().purchases().get(left.purchase());
        return new Fields()
                .text("variety", named.variety(left.variety()))
                .number("bulbs", left.bulbs())
                .text("waitsAt", named.place(purchase.waits()));
    }
}
