// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sillbook.reckon.effects.Confounded;
import sillbook.reckon.effects.Confounding;
import sillbook.reckon.effects.Difference;
import sillbook.reckon.effects.Effects;
import sillbook.reckon.effects.FactorEffects;
import sillbook.reckon.effects.LevelEffect;
import sillbook.reckon.effects.Nested;
import sillbook.words.Provisos;

/** What scores were made of, as JSON. */
public final class EffectsJson {
    private EffectsJson() {}

    /** The document of {@code sillbook reckon effects --json}. */
    public static String write(Effects effects, Confounding confounding, List<Nested> nested, Provisos provisos) {
        Fields levels = new Fields();
        effects.factors().forEach(factor -> levels.object(factor.name(), levels(factor)));
        Fields fields = new Fields()
                .number("mean", effects.mean().value())
                .number("se", effects.mean().sd())
                .object("sd", sds(effects))
                .decimal("criterion", boxed(effects.criterion()))
                .decimal("effectiveSize", boxed(effects.effectiveSize()))
                .object("levels", levels)
                .list(
                        "differences",
                        effects.factors().stream()
                                .flatMap(factor -> factor.differences().stream()
                                        .map(difference -> difference(factor.name(), difference)))
                                .toList(),
                        difference -> difference)
                .list("confounded", confounding.factors(), EffectsJson::confounded)
                .list(
                        "nested",
                        nested,
                        each -> new Fields().text("factor", each.factor()).text("within", each.within()));
        return Answer.write(fields, provisos);
    }

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private static Fields sds(Effects effects) {
        Fields sds = new Fields();
        effects.factors().forEach(factor -> sds.number(factor.name(), factor.sd()));
        return sds.number("residual", effects.residual());
    }

    private static Fields levels(FactorEffects factor) {
        Fields levels = new Fields();
        factor.levels().forEach(level -> levels.object(level.level(), level(level)));
        return levels;
    }

    private static Fields level(LevelEffect level) {
        return new Fields()
                .number("mean", level.effect().value())
                .number("sd", level.effect().sd());
    }

    private static Fields difference(String factor, Difference difference) {
        return new Fields()
                .text("factor", factor)
                .text("a", difference.a())
                .text("b", difference.b())
                .number("mean", difference.value())
                .number("sd", difference.sd())
                .number("better", difference.better());
    }

    private static Fields confounded(Confounded confounded) {
        return new Fields()
                .text("factor", confounded.factor())
                .list("groups", confounded.groups(), group -> new Fields().texts("levels", group))
                .texts("with", confounded.with());
    }
}
