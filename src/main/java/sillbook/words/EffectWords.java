// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.reckon.effects.Confounded;
import sillbook.reckon.effects.Confounding;
import sillbook.reckon.effects.Design;
import sillbook.reckon.effects.Difference;
import sillbook.reckon.effects.Effects;
import sillbook.reckon.effects.Estimate;
import sillbook.reckon.effects.FactorEffects;
import sillbook.reckon.effects.LevelEffect;

/**
 * What scores were made of, in plain lines.
 *
 * @param decimals as many as give the residual two digits that count
 */
public record EffectWords(int decimals) {
    private static final double SURE = 0.9;

    public static EffectWords of(Effects effects) {
        double digits = 1 - Math.floor(Math.log10(Math.max(effects.residual(), 1e-6)));
        return new EffectWords((int) Math.max(0, digits));
    }

    /** Of scores that are not of the sort the average is made for. */
    public static String tooWide(double spread) {
        return "These scores spread by " + Decimal.say(spread, 1)
                + ", and the average is made for scores of about 1 to 5.";
    }

    /** First what cannot be told apart, then the figures; of differences those that are sure 9 times in 10. */
    public List<String> lines(Effects effects, Confounding confounding, Design design) {
        List<String> lines = new ArrayList<>();
        confounding.factors().forEach(confounded -> lines.add(said(confounded)));
        design.nested().forEach(nested -> lines.add("nested: " + nested.factor() + " within " + nested.within()));
        lines.add(Counts.of(design.records(), "record") + ", mean " + said(effects.mean()));
        lines.add("sd: " + sds(effects));
        for (FactorEffects factor : effects.factors()) {
            factor.levels().stream()
                    .sorted(Comparator.comparingDouble(level -> -level.effect().value()))
                    .forEach(level -> lines.add(said(factor.name(), level)));
            lines.addAll(differences(factor));
        }
        effects.criterion().ifPresent(criterion -> lines.add("criterion: " + Decimal.say(criterion, 2)));
        effects.effectiveSize()
                .ifPresent(size -> lines.add("averaged over as much as " + Math.round(size) + " points"));
        return lines;
    }

    private String said(Estimate estimate) {
        return Decimal.sayFixed(estimate.value(), decimals) + " (sd " + Decimal.sayFixed(estimate.sd(), decimals) + ")";
    }

    private String signed(double value) {
        return (value < 0 ? "" : "+") + Decimal.sayFixed(value, decimals);
    }

    private String sds(Effects effects) {
        return Stream.concat(
                        effects.factors().stream().map(factor -> Map.entry(factor.name(), factor.sd())),
                        Stream.of(Map.entry("residual", effects.residual())))
                .map(each -> each.getKey() + " " + Decimal.sayFixed(each.getValue(), decimals))
                .collect(Collectors.joining(", "));
    }

    private String said(String factor, LevelEffect level) {
        return factor + " " + level.level() + ": " + signed(level.effect().value()) + " (sd "
                + Decimal.sayFixed(level.effect().sd(), decimals) + "), "
                + Counts.of(Math.round(level.records()), "record");
    }

    private List<String> differences(FactorEffects factor) {
        List<String> sure = factor.differences().stream()
                .map(difference -> difference.better() < 0.5 ? difference.turned() : difference)
                .filter(difference -> difference.better() >= SURE)
                .sorted(Comparator.comparingDouble(difference -> -difference.better()))
                .map(this::said)
                .toList();
        return sure.isEmpty() && factor.levels().size() > 1
                ? List.of("no two of " + factor.name() + " are told apart 9 times in 10")
                : sure;
    }

    private String said(Difference difference) {
        return difference.a() + " above " + difference.b() + ": " + signed(difference.value()) + " (sd "
                + Decimal.sayFixed(difference.sd(), decimals) + "), chance " + percent(difference.better());
    }

    /** Of chances, which are never quite certain. */
    static String percent(double chance) {
        return Math.min(99, Math.round(100 * chance)) + " %";
    }

    private static String said(Confounded confounded) {
        String groups = confounded.groups().stream()
                .map(group -> String.join(", ", group))
                .collect(Collectors.joining(" | "));
        return "cannot be told from " + Counts.and(confounded.with()) + ": " + confounded.factor() + " " + groups;
    }
}
