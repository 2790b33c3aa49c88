// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureInForce.Bulb;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.handbook.Origin;
import sillbook.handbook.OwnFigures;
import sillbook.handbook.Unit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.OwnFigure;
import sillbook.model.OwnFigure.Range;
import sillbook.model.OwnFigure.Scope;
import sillbook.model.OwnKind;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Need;
import sillbook.reckon.effects.Proportion;
import sillbook.reckon.stages.Widening;

/**
 * The figures that hold in a journal: the grower's own, typed or learnt, over the handbook's, each with where it comes
 * from.
 */
public final class Figures {
    /** No figure of the trade is longer; a longer one of the grower's own is read as this. */
    static final double MOST_WEEKS = 520;

    private static final int DAYS_IN_WEEK = 7;

    private static final double HUNDREDTHS = 100;

    /**
     * Taken for granted where nobody published, or wrote, how long the flowers last: one to two weeks in a room (common
     * practice).
     */
    private static final FigureInForce USUAL_BLOOM =
            new FigureInForce(FigureName.IN_BLOOM, new Range(7, 10, 14), Origin.ASSUMED, Optional.empty());

    private final Journal journal;
    private final Handbook handbook;
    private final OwnFigures own;
    private final Learning learning;
    private final FiguresOfPots ofPots;
    private final Map<String, Kind> likes = new HashMap<>();

    private final Map<Id<Variety>, Boolean> livesOn = new ConcurrentHashMap<>();

    private Figures(Journal journal, Handbook handbook, LocalDate today) {
        this.journal = journal;
        this.handbook = handbook;
        OwnLengths lengths = new OwnLengths(journal, today, this::leastCold);
        this.learning = new Learning(lengths, this::published, widening(journal, today));
        this.own = new Typed(journal, learning);
        this.ofPots = new FiguresOfPots(journal, this, today);
        for (OwnKind kind : journal.ownKinds().all()) {
            kind.like().ifPresent(like -> likes.put(kind.name().toLowerCase(Locale.ROOT), like));
        }
    }

    /** The figures as they hold on a day; what is written for later days has taught nothing yet. */
    public static Figures of(Journal journal, Handbook handbook, LocalDate today) {
        return new Figures(journal, handbook, today);
    }

    /** By how much what was learnt is widened on a day. */
    public static Widening widening(Journal journal, LocalDate day) {
        return widening(journal, journal.seasonOf(day));
    }

    /** The same in a season. */
    public static Widening widening(Journal journal, Season season) {
        return journal.pastWindows(season)
                .map(past -> new Widening(new Proportion(past.held(), past.of()), past.reach() / HUNDREDTHS))
                .orElse(Widening.NONE);
    }

    /** What the grower said of figures, and what own pots taught. */
    private static final class Typed implements OwnFigures {
        private final Map<Scope, Map<String, Optional<Range>>> said = new HashMap<>();
        private final Learning learning;

        Typed(Journal journal, Learning learning) {
            this.learning = learning;
            for (OwnFigure figure : journal.ownFigures().all()) {
                said.computeIfAbsent(figure.scope(), scope -> new HashMap<>()).put(figure.figure(), figure.range());
            }
        }

        @Override
        public Optional<Range> find(Scope scope, FigureName name) {
            return said(scope).getOrDefault(name.key(), Optional.empty());
        }

        @Override
        public boolean isHandbookAsked(Scope scope, FigureName name) {
            return said(scope).containsKey(name.key()) && find(scope, name).isEmpty();
        }

        private Map<String, Optional<Range>> said(Scope scope) {
            return said.getOrDefault(scope, Map.of());
        }

        @Override
        public Optional<Learnt> learnt(Scope scope, Bulb bulb, FigureName name) {
            return PlantSpan.of(name)
                    .flatMap(span -> learning.of(scope, bulb.kind(), span))
                    .map(length -> new Learnt(length.asUsual().range(), length.pots()));
        }
    }

    /** The figure that holds for a variety; empty where nobody published or wrote one. */
    public Optional<FigureInForce> find(Variety variety, FigureName name) {
        return find(new Bulb(Optional.of(variety.id()), variety.kind(), like(variety.kind())), name);
    }

    /** The figure that holds for a kind, where its variety says nothing else. */
    public Optional<FigureInForce> find(Kind kind, FigureName name) {
        return find(new Bulb(Optional.empty(), kind, like(kind)), name);
    }

    /** The weeks of dry cold that count for a variety; empty where it needs no cold. */
    Optional<FigureInForce> dryLimit(Variety variety) {
        return find(variety, FigureName.COLD).flatMap(cold -> find(variety, FigureName.DRY_COLD));
    }

    private Optional<Integer> leastCold(Variety variety) {
        return find(variety, FigureName.COLD)
                .map(figure -> DayCount.daysOfWeeks(Math.min(figure.range().low(), MOST_WEEKS)));
    }

    private Optional<FigureInForce> find(Bulb bulb, FigureName name) {
        return orUsual(FigureInForce.find(handbook, own, bulb, name), name);
    }

    /** What holds where the grower has no figure. */
    private Optional<FigureInForce> published(Kind kind, FigureName name) {
        Bulb bulb = new Bulb(Optional.empty(), kind, like(kind));
        return orUsual(FigureInForce.find(handbook, OwnFigures.NONE, bulb, name), name);
    }

    private static Optional<FigureInForce> orUsual(Optional<FigureInForce> found, FigureName name) {
        return name == FigureName.IN_BLOOM ? found.or(() -> Optional.of(USUAL_BLOOM)) : found;
    }

    /** What a figure of a variety was learnt from; empty where the one in force was not learnt. */
    Optional<LearntLength> learnt(Id<Variety> variety, Kind kind, FigureInForce figure) {
        Optional<PlantSpan> span = PlantSpan.of(figure.name());
        return switch (figure.origin()) {
            case LEARNT_FOR_VARIETY -> span.flatMap(of -> learning.of(Scope.of(variety), kind, of));
            case LEARNT_FOR_KIND -> span.flatMap(of -> learnt(Stream.of(kind, kind.withoutGroup()), kind, of));
            default -> Optional.empty();
        };
    }

    private Optional<LearntLength> learnt(Stream<Kind> kinds, Kind kind, PlantSpan span) {
        return kinds.flatMap(of -> learning.of(Scope.of(of), kind, span).stream())
                .findFirst();
    }

    /** What own pots taught of a sign, of which there is no figure: those of the variety, or else of its kind. */
    Optional<LearntLength> sign(Variety variety, PlantSpan span) {
        Kind kind = variety.kind();
        return learning.of(Scope.of(variety.id()), kind, span)
                .or(() -> learnt(Stream.of(kind, kind.withoutGroup()), kind, span));
    }

    /** What own pots taught of a figure of a variety, where the handbook's was asked for instead. */
    Optional<WhyLearnt> setAside(PotFigures.OfVariety of, FigureInForce holds) {
        Bulb bulb = new Bulb(Optional.of(of.variety()), of.kind(), like(of.kind()));
        List<OwnFigure> asked = asking(bulb, holds.name());
        return asked.isEmpty()
                ? Optional.empty()
                : FigureInForce.find(handbook, own.unasked(), bulb, holds.name())
                        .flatMap(figure -> learnt(of.variety(), of.kind(), figure))
                        .map(length -> new WhyLearnt(
                                length.asUsual(), Optional.of(new SetAside(asked, holds)), holds.range()));
    }

    /** What the grower wrote by which the handbook's holds. */
    private List<OwnFigure> asking(Bulb bulb, FigureName name) {
        List<Scope> scopes = FigureInForce.scopes(handbook, bulb);
        return journal.ownFigures().all().stream()
                .filter(figure -> figure.range().isEmpty()
                        && figure.figure().equals(name.key())
                        && scopes.contains(figure.scope()))
                .toList();
    }

    private Kind like(Kind kind) {
        return likes.getOrDefault(kind.name().toLowerCase(Locale.ROOT), kind);
    }

    /** Whether the plant that names the pot lives on from year to year: its kind has a yearly rest. */
    boolean livesOn(Pot pot) {
        return livesOn.computeIfAbsent(
                pot.first().variety(),
                id -> find(journal.varieties().get(id), FigureName.REST).isPresent());
    }

    /** Whether the handbook has figures for this kind, or for the one it is said to be like. */
    public boolean isKnown(Kind kind) {
        return handbook.entry(like(kind)).isPresent();
    }

    /** The figures of a pot, those of each variety beside the cold they share, and what was learnt for what it is under. */
    PotFigures of(PotLife life) {
        return ofPots.of(life);
    }

    /** What figures add up to, for the reckoning of dates; each is in the unit of its name. */
    public static Need needOf(Function<FigureName, Optional<Range>> figures) {
        Optional<DayCount> cold = days(figures, FigureName.COLD);
        return new Need(
                cold,
                cold.flatMap(needed -> days(figures, FigureName.COLD_LIMIT)).map(DayCount::typical),
                days(figures, FigureName.AFTER_COLD).orElse(DayCount.ZERO),
                days(figures, FigureName.COOL_ROOM),
                days(figures, FigureName.IN_BLOOM));
    }

    private static Optional<DayCount> days(Function<FigureName, Optional<Range>> figures, FigureName name) {
        int perUnit = name.unit() == Unit.WEEKS ? DAYS_IN_WEEK : 1;
        return figures.apply(name)
                .map(range -> DayCount.ofDays(
                        sane(range.low() * perUnit), sane(range.typical() * perUnit), sane(range.high() * perUnit)));
    }

    private static double sane(double days) {
        return Math.max(0, Math.min(days, MOST_WEEKS * DAYS_IN_WEEK));
    }
}
