// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static java.util.stream.Collectors.joining;

import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Journal;
import sillbook.model.Potting;
import sillbook.model.Potting.Depth;
import sillbook.model.Potting.Holes;
import sillbook.model.PottingMix;
import sillbook.model.UsualWay;

/** How pots are filled, as it is said. */
public record PottingWords(Journal journal) {

    /** {@code mesh over the holes, tips level, grit on top}; empty where nothing is known. */
    public static String facts(Potting potting) {
        return Stream.of(holes(potting.holes()), depth(potting.depth()), topping(potting.topping()))
                .flatMap(Optional::stream)
                .collect(joining(", "));
    }

    private static Optional<String> holes(Holes holes) {
        return Optional.of(holes).filter(known -> known != Holes.NOT_SAID).map(Terms.HOLES::say);
    }

    private static Optional<String> depth(Depth depth) {
        return Optional.of(depth).filter(known -> known != Depth.NOT_SAID).map(Terms.DEPTHS::say);
    }

    private static Optional<String> topping(String topping) {
        return Optional.of(topping).filter(said -> !said.isEmpty()).map(said -> said + " on top");
    }

    /** The same of a pot, with the usual way it was filled by: {@code ... (usual way kitchen pans)}. */
    public static String say(Potting potting) {
        String way = potting.usualWay().isEmpty() ? "" : "usual way " + potting.usualWay();
        String facts = facts(potting);
        return way.isEmpty() || facts.isEmpty() ? facts + way : facts + " (" + way + ")";
    }

    /** All that a usual way is: {@code pan 15 cm, sill mix, mesh over the holes, tips level, grit on top}. */
    public String say(UsualWay way) {
        Stream<String> pot = way
                .container()
                .map(id -> journal.containers().get(id).name())
                .or(() -> way.across()
                        .map(across -> "pots of "
                                + Lengths.say(across, journal.settings().lengths())))
                .stream();
        Stream<String> mix = way.pottingMix().map(journal.pottingMixes()::get).map(PottingMix::name).stream();
        Stream<String> facts = Stream.of(facts(way.potting()), way.note()).filter(said -> !said.isEmpty());
        String says = Stream.of(pot, mix, facts).flatMap(some -> some).collect(joining(", "));
        return says.isEmpty() ? "nothing said of it yet" : says;
    }
}
