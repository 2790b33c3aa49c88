// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import sillbook.model.Entity;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Labels;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.model.Subject;
import sillbook.model.Variety;

/** The words that names of steps and refusals are made of. */
final class Said {
    private Said() {}

    /** {@code T1-T6 T9}. */
    static String labels(Journal journal, Collection<Id<Pot>> pots) {
        List<String> labels =
                pots.stream().map(pot -> journal.pots().get(pot).label()).toList();
        return Labels.say(labels);
    }

    static String place(Journal journal, Id<Place> place) {
        return journal.places().get(place).name();
    }

    static String variety(Journal journal, Id<Variety> variety) {
        return "'" + journal.varieties().get(variety).name() + "'";
    }

    /** {@code into the cool room}. */
    static String into(Stage stage) {
        return switch (stage) {
            case WAITING -> "back to waiting";
            case COLD -> "into the cold";
            case COOL_ROOM -> "into the cool room";
            case WARM_ROOM -> "into the warm room";
            case IN_BLOOM -> "in bloom";
            case AFTER_BLOOM -> "after bloom";
            case DONE -> "done";
        };
    }

    /** An enum constant as words: {@code FIRST_FLOWER} is {@code first flower}. */
    static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static String subject(Journal journal, Subject subject) {
        return subject.fold(new SubjectNames(journal));
    }

    /** What each sort of subject is called. */
    private record SubjectNames(Journal journal) implements Subject.Cases<String> {
        @Override
        public String pot(Id<Pot> pot) {
            return journal.pots().get(pot).label();
        }

        @Override
        public String place(Id<Place> place) {
            return Said.place(journal, place);
        }

        @Override
        public String variety(Id<Variety> variety) {
            return Said.variety(journal, variety);
        }

        @Override
        public String purchase(Id<Purchase> purchase) {
            return "purchase of " + variety(journal.purchases().get(purchase).variety());
        }

        @Override
        public String season(Season season) {
            return "season " + Said.season(journal, season);
        }
    }

    /** {@code 2027-28}. */
    static String season(Journal journal, Season season) {
        return journal.nameOf(season);
    }

    /** {@code Mon 21 Sep 2026}. */
    static String day(LocalDate day) {
        return shortly(day.getDayOfWeek()) + " " + day.getDayOfMonth() + " " + shortly(day.getMonth()) + " "
                + day.getYear();
    }

    private static String shortly(Enum<?> one) {
        return one.name().charAt(0) + one.name().substring(1, 3).toLowerCase(Locale.ROOT);
    }

    /** What an entity is called in the name of a step. */
    static String entity(Journal journal, Entity<?> entity) {
        return EntityNames.of(journal, entity);
    }

    static String plural(int count, String noun) {
        String grouped = Integer.toString(count).replaceAll("(?<=\\d)(?=(\\d{3})+$)", " ");
        return grouped + " " + noun + (count == 1 ? "" : "s");
    }
}
