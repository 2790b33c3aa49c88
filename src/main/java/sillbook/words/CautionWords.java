// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.handbook.Remark;
import sillbook.handbook.Topic;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Place;
import sillbook.model.Place.Hazard;
import sillbook.model.Pot;
import sillbook.model.Settings;

/**
 * Cautions where the work is: of a kind, and of a place. Each is the handbook's, with its source's mark, and defers to the
 * poison centre, the doctor, the vet, the label.
 */
public record CautionWords(Handbook handbook, Settings settings) {
    private static final Set<Topic> POISON = Set.of(Topic.CAUTION_PEOPLE, Topic.CAUTION_PETS, Topic.CAUTION_LOOKALIKE);

    /** Of a kind that the handbook does not have. */
    private static final String NOT_KNOWN =
            "Not known to be harmless: keep it away from food, children and pets. (common practice)";

    private static final Set<Topic> OF_PLACES = Set.of(Topic.CAUTION_FRIDGE, Topic.CAUTION_FUMES, Topic.CAUTION_ROT);

    /** What to beware of with a kind: people first, then skin, pets and what it is mistaken for. */
    public List<String> of(Kind kind) {
        List<String> own = handbook.cautions(kind).stream()
                .filter(remark -> isOf(remark, kind))
                .map(RemarkWords::marked)
                .toList();
        return own.isEmpty() ? List.of(NOT_KNOWN) : own;
    }

    /** The same of all that a pot holds, each kind once. */
    public List<String> of(Journal journal, Pot pot) {
        return pot.plantings().stream()
                .map(planting -> journal.varieties().get(planting.variety()).kind())
                .distinct()
                .flatMap(kind -> of(kind).stream())
                .toList();
    }

    /** What belongs beneath the labels of some pots: not food, people, pets; with the sources by name, since paper has no page of them. */
    public List<String> ofLabels(Journal journal, Collection<Id<Pot>> pots) {
        SourceWords sources = new SourceWords(handbook, settings);
        Stream<Kind> kinds = pots.stream()
                .map(journal.pots()::get)
                .flatMap(pot -> pot.plantings().stream())
                .map(planting -> journal.varieties().get(planting.variety()).kind())
                .distinct();
        return Stream.concat(
                        handbook.remarks(Handbook.EVERY, Topic.CAUTION_PEOPLE).stream()
                                .map(remark -> remark.says() + " (" + sources.names(remark.sources()) + ")"),
                        kinds.flatMap(kind -> poison(kind, sources)))
                .distinct()
                .toList();
    }

    private Stream<String> poison(Kind kind, SourceWords sources) {
        return handbook.cautions(kind).stream()
                .filter(remark -> isOf(remark, kind) && POISON.contains(remark.topic()))
                .map(remark -> remark.kind() + ": " + remark.says() + " (" + sources.names(remark.sources()) + ")");
    }

    private static boolean isOf(Remark remark, Kind kind) {
        return remark.kind().name().equals(kind.name());
    }

    /** What holds for every bulb and every bag: eating, pets, dust. */
    public List<String> general() {
        return handbook.cautions(Handbook.EVERY).stream()
                .filter(remark -> !OF_PLACES.contains(remark.topic()))
                .map(RemarkWords::marked)
                .toList();
    }

    /** What to do before potting, in one line; the caution of dust says more. */
    public Optional<String> beforePotting() {
        return handbook.remarks(Handbook.EVERY, Topic.CAUTION_DUST).stream()
                .findFirst()
                .map(remark ->
                        "Wear gloves and wet the potting mix first: its dust can do harm." + RemarkWords.mark(remark));
    }

    /** The first of a kind in one line, for where there is room for one only. */
    public String brief(Kind kind) {
        return handbook.cautions(kind).stream()
                .filter(remark -> isOf(remark, kind))
                .findFirst()
                .map(remark -> firstSentence(remark.says()) + RemarkWords.mark(remark))
                .orElse(NOT_KNOWN);
    }

    /** What to beware of at a place, by its hazards. */
    public List<String> of(Place place) {
        return place.hazards().stream()
                .sorted()
                .flatMap(hazard -> of(hazard).stream())
                .toList();
    }

    private List<String> of(Hazard hazard) {
        return switch (hazard) {
            case FOOD -> fridge("food");
            case FRUIT -> fridge("fruit");
            case FROST -> frost();
            case MICE -> List.of("Mice eat bulbs: cover the pots with fine wire mesh (common practice).");
            case PETS -> every(Topic.CAUTION_PETS);
            case CHILDREN -> every(Topic.CAUTION_PEOPLE);
            case FUMES -> every(Topic.CAUTION_FUMES);
            case ROTTING_BULBS -> every(Topic.CAUTION_ROT);
            case COLD_WALL ->
                List.of("The back wall freezes what stands against it: leave a hand's width free (common practice).");
            case DOOR_AJAR ->
                List.of(
                        "A door ajar lets it warm up unseen: see that it shuts, and lay a thermometer in (common practice).");
            case UNHEATED_ROOM ->
                List.of(
                        "Where the room is colder than its label allows, a fridge may stop, and warm up or freeze: read the label, "
                                + "and lay a thermometer in (common practice).");
        };
    }

    private List<String> every(Topic topic) {
        return handbook.remarks(Handbook.EVERY, topic).stream()
                .map(RemarkWords::marked)
                .toList();
    }

    /** What is published of a fridge shared with that. */
    private List<String> fridge(String what) {
        return handbook.remarks(Handbook.EVERY, Topic.CAUTION_FRIDGE).stream()
                .filter(remark -> remark.says().contains(what))
                .map(RemarkWords::marked)
                .toList();
    }

    private List<String> frost() {
        return handbook
                .figure(Handbook.HARDY, FigureName.POT_FROST)
                .map(figure -> "A pot freezes through where the ground does not: shelter it before it is under "
                        + FigureValues.say(FigureName.POT_FROST, figure.range(), settings)
                        + OriginMarks.after(figure.sources())
                        + ".")
                .stream()
                .toList();
    }

    private static String firstSentence(String says) {
        int end = says.indexOf(". ");
        return end < 0 ? says : says.substring(0, end + 1);
    }
}
