// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.handbook.FigureName;
import sillbook.model.Cause;
import sillbook.model.Container.Shape;
import sillbook.model.Failure;
import sillbook.model.Failure.Sign;
import sillbook.model.Findings.Firmness;
import sillbook.model.Findings.Growth;
import sillbook.model.Findings.Moisture;
import sillbook.model.Findings.Roots;
import sillbook.model.Findings.Trouble;
import sillbook.model.Findings.Water;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.JobKind;
import sillbook.model.Outcome.Again;
import sillbook.model.Pot.Way;
import sillbook.model.Potting.Depth;
import sillbook.model.Potting.Holes;
import sillbook.model.Purchase.State;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Stage;
import sillbook.model.Variety.BloomSeason;
import sillbook.model.Variety.ForPots;
import sillbook.model.Variety.PacketForcing;
import sillbook.model.Variety.Scent;

/** The words of every fixed set of things but the {@link Feasts}. They are said nowhere else. */
public final class Terms {
    public static final Vocabulary<Stage> STAGES = Vocabulary.<Stage>of("stage")
            .with(Stage.WAITING, "waiting")
            .with(Stage.COLD, "cold", "the cold", "in the cold", "into the cold", "into cold")
            .with(Stage.COOL_ROOM, "cool room", "cool", "in the cool room", "into the cool room", "into cool room")
            .with(Stage.WARM_ROOM, "warm room", "warm", "warmth", "in the warm room", "into the warm room", "to warmth")
            .with(Stage.IN_BLOOM, "in bloom", "bloom", "in flower")
            .with(Stage.AFTER_BLOOM, "after bloom")
            .with(Stage.DONE, "done");

    public static final Vocabulary<Shape> SHAPES = Vocabulary.<Shape>of("shape of pot")
            .with(Shape.STANDARD, "standard", "standard pot")
            .with(Shape.AZALEA, "azalea", "azalea pot")
            .with(Shape.PAN, "pan")
            .with(Shape.BOWL, "bowl")
            .with(Shape.GLASS, "glass", "water glass")
            .with(Shape.OUTER, "outer pot", "outer")
            .with(Shape.OTHER, "other");

    public static final Vocabulary<Scent> SCENTS = Vocabulary.<Scent>of("scent")
            .with(Scent.NOT_SAID, "scent not said")
            .with(Scent.NONE, "no scent", "unscented", "not scented")
            .with(Scent.LIGHT, "lightly scented", "scented", "light scent")
            .with(Scent.STRONG, "strongly scented", "strong scent");

    public static final Vocabulary<BloomSeason> BLOOM_SEASONS = Vocabulary.<BloomSeason>of("time of flower")
            .with(BloomSeason.NOT_SAID, "season not said", "time of flower not said")
            .with(BloomSeason.EARLY, "early", "early in the season", "flowers early", "early season")
            .with(BloomSeason.MID, "mid season", "mid", "midseason", "flowers mid season")
            .with(BloomSeason.LATE, "late", "late in the season", "flowers late", "late season");

    public static final Vocabulary<ForPots> FOR_POTS = Vocabulary.<ForPots>of("mark for pots")
            .with(ForPots.NOT_MARKED, "no mark for pots", "not marked for pots")
            .with(ForPots.SUITS, "suits pots", "good in pots")
            .with(ForPots.TALL, "tall for pots", "tall for a pot", "tall in pots")
            .with(ForPots.UNSUITED, "not for pots", "unsuited to pots");

    public static final Vocabulary<PacketForcing> PACKETS = Vocabulary.<PacketForcing>of("word of the packet")
            .with(PacketForcing.NOT_STATED, "not stated", "nothing")
            .with(PacketForcing.YES, "yes")
            .with(PacketForcing.NO, "no");

    public static final Vocabulary<State> STATES = Vocabulary.<State>of("state of a purchase")
            .with(State.TO_ORDER, "to order")
            .with(State.ORDERED, "ordered")
            .with(State.IN_HAND, "in hand", "arrived", "here")
            .with(State.REJECTED, "rejected");

    public static final Vocabulary<Way> WAYS = Vocabulary.<Way>of("way of growing")
            .with(Way.DRAINED, "drained pot", "drained", "with holes")
            .with(Way.BOWL, "bowl without holes", "bowl", "without holes")
            .with(Way.GLASS, "water glass", "glass")
            .with(Way.PEBBLES, "pebbles");

    public static final Vocabulary<Holes> HOLES = Vocabulary.<Holes>of("cover of the holes")
            .with(Holes.NOT_SAID, "holes not said")
            .with(Holes.PAPER, "paper over the holes", "paper")
            .with(Holes.MESH, "mesh over the holes", "mesh")
            .with(Holes.CROCKS, "crocks over the holes", "crocks", "crock")
            .with(Holes.OPEN, "holes open", "nothing over the holes");

    public static final Vocabulary<Depth> DEPTHS = Vocabulary.<Depth>of("depth")
            .with(Depth.NOT_SAID, "depth not said")
            .with(Depth.HALF_OUT, "half out", "top half out")
            .with(Depth.THIRD_OUT, "a third out", "third out", "top third out")
            .with(Depth.TIPS_OUT, "tips out", "noses out", "tips showing")
            .with(Depth.TIPS_LEVEL, "tips level", "level")
            .with(Depth.JUST_COVERED, "tips just covered", "just covered")
            .with(Depth.COVERED, "covered", "wholly covered");

    public static final Vocabulary<Moisture> MOISTURES = Vocabulary.<Moisture>of("moisture")
            .with(Moisture.DRY, "dry")
            .with(Moisture.MOIST, "moist")
            .with(Moisture.WET, "wet");

    public static final Vocabulary<Water> WATERS = Vocabulary.<Water>of("height of the water")
            .with(Water.LOW, "water low", "low water")
            .with(Water.RIGHT, "water right", "water good", "water at the base")
            .with(Water.HIGH, "water high", "high water");

    public static final Vocabulary<Firmness> FIRMNESSES = Vocabulary.<Firmness>of("feel of a bulb")
            .with(Firmness.FIRM, "firm", "hard")
            .with(Firmness.SOFT, "soft");

    public static final Vocabulary<Roots> ROOTS = Vocabulary.<Roots>of("word for roots")
            .with(Roots.NONE, "no roots yet", "no roots", "not rooted")
            .with(Roots.SHOWING, "roots", "rooted", "roots showing");

    public static final Vocabulary<Growth> GROWTHS = Vocabulary.<Growth>of("sign of growth")
            .with(Growth.BUDS, "buds", "bud")
            .with(Growth.COLOUR, "colour", "color");

    public static final Vocabulary<Trouble> TROUBLES = Vocabulary.<Trouble>of("trouble")
            .with(Trouble.MOULD, "mould", "mold", "mouldy", "moldy")
            .with(Trouble.MICE, "mice", "mouse")
            .with(Trouble.FROST, "frost", "frosted", "frozen")
            .with(Trouble.ROT, "rot", "rotten")
            .with(Trouble.YELLOWING, "yellowing", "yellow")
            .with(Trouble.BLASTED, "blasted", "blasted buds", "buds blasted")
            .with(Trouble.CLOUDY, "water cloudy", "cloudy", "cloudy water")
            .with(Trouble.OTHER, "trouble");

    public static final Vocabulary<BloomPoint> BLOOM_POINTS = Vocabulary.<BloomPoint>of("point of bloom")
            .with(BloomPoint.FIRST_FLOWER, "first flower", "first flowers", "flowering", "in bloom", "in flower")
            .with(BloomPoint.FULL_BLOOM, "full bloom", "full", "full flower")
            .with(BloomPoint.PAST_BLOOM, "past bloom", "past", "faded", "flowers over");

    public static final Vocabulary<Care> CARES = Vocabulary.<Care>of("care")
            .with(Care.WATERED, "watered")
            .with(Care.TOPPED_UP, "topped up", "water topped up")
            .with(Care.WATER_CHANGED, "water changed", "changed water", "fresh water")
            .with(Care.TIPPED_OUT, "tipped out", "tipped to drain", "drained")
            .with(
                    Care.SPIRIT_IN_WATER,
                    "spirit in the water",
                    "spirit in water",
                    "spirit",
                    "alcohol in the water",
                    "alcohol")
            .with(Care.FED, "fed")
            .with(Care.TURNED, "turned")
            .with(Care.STAKED, "staked")
            .with(Care.HOODED, "hooded", "hood on")
            .with(Care.UNHOODED, "unhooded", "hood off")
            .with(Care.REPOTTED, "repotted")
            .with(Care.PLANTED_OUT, "planted out")
            .with(Care.INTO_OUTER_POT, "into outer pot", "outer pot")
            .with(Care.LEAVES_CUT, "leaves cut")
            .with(Care.RESTED, "rested", "resting", "in rest", "put to rest", "at rest")
            .with(Care.WOKEN, "woken", "woken up")
            .with(Care.OUTDOORS, "outdoors", "put outdoors")
            .with(Care.BROUGHT_IN, "brought in", "brought indoors", "indoors")
            .with(Care.LIFTED, "lifted", "lifted to look")
            .with(Care.DUG, "dug")
            .with(Care.COVERED, "covered", "mulched");

    public static final Vocabulary<End> ENDS = Vocabulary.<End>of("end")
            .with(End.FINISHED, "done", "finished")
            .with(End.FAILED, "failed")
            .with(End.SOLD, "sold")
            .with(End.GIVEN, "given away", "given")
            .with(End.BROKEN, "broken")
            .with(End.USED_UP, "used up");

    public static final Vocabulary<Sign> SIGNS = Vocabulary.<Sign>of("sign of failure")
            .with(Sign.LEAVES_ONLY, "leaves only", "only leaves")
            .with(Sign.BROWN_BUD, "brown bud", "brown buds")
            .with(Sign.SHORT_AND_STUCK, "short and stuck", "stuck", "short")
            .with(Sign.FLOPPY, "floppy")
            .with(Sign.ROT, "rot", "rotten")
            .with(Sign.NOTHING_CAME, "nothing came", "nothing");

    /** What the roots of a failed pot were like; the word "roots" stands before it. */
    public static final Vocabulary<Failure.Roots> FAILED_ROOTS = Vocabulary.<Failure.Roots>of("word for failed roots")
            .with(Failure.Roots.NONE, "none")
            .with(Failure.Roots.BROWN, "brown")
            .with(Failure.Roots.WHITE, "white")
            .with(Failure.Roots.THROUGH, "through", "through the holes");

    public static final Vocabulary<Cause> CAUSES = Vocabulary.<Cause>of("cause of failure")
            .with(Cause.COLD_SHORT, "cold short", "short of cold", "too little cold")
            .with(Cause.WARM_SPELL, "warm spell", "too warm")
            .with(Cause.FROZEN, "frozen", "frost", "froze")
            .with(Cause.TOO_WET_OR_DRY, "too wet or dry", "too wet", "too dry", "wet", "dry", "drought")
            .with(Cause.FRUIT_NEAR, "fruit near", "fruit", "fruit gas")
            .with(Cause.RUSHED, "rushed", "warmed too fast");

    public static final Vocabulary<Again> AGAINS = Vocabulary.<Again>of("answer")
            .with(Again.NOT_SAID, "not said")
            .with(Again.YES, "yes")
            .with(Again.NO, "no")
            .with(Again.DIFFERENTLY, "differently");

    /** What a job asks for, before it is known where and with what words Today says it. */
    public static final Vocabulary<JobKind> JOBS = Vocabulary.<JobKind>of("job")
            .with(JobKind.POT_UP, "pot up")
            .with(JobKind.INTO_COLD, "into the cold")
            .with(JobKind.CHECK, "check")
            .with(JobKind.BRING_IN, "bring in", "bring into cool room")
            .with(JobKind.MOVE_TO_WARMTH, "move to warm room", "move to warmth")
            .with(JobKind.WATCH_FOR_FLOWER, "watch for first flower")
            .with(JobKind.KEEP_COOL_IN_BLOOM, "keep cool in bloom")
            .with(JobKind.PAST_BLOOM, "past bloom")
            .with(JobKind.AFTERCARE, "aftercare")
            .with(JobKind.FEED, "feed")
            .with(JobKind.PUT_OUTDOORS, "put outdoors", "outdoors")
            .with(JobKind.TAKE_INDOORS, "take indoors", "indoors")
            .with(JobKind.START_REST, "start its rest", "rest")
            .with(JobKind.WAKE, "wake: water, warm", "wake")
            .with(JobKind.REPOT, "repot")
            .with(JobKind.WRITE_OUTCOME, "write the outcome", "outcome")
            .with(JobKind.DAILY_CARE, "daily care")
            .with(JobKind.DIG_TRENCH, "dig the trench", "dig")
            .with(JobKind.POTS_IN, "pots in", "pots into the trench")
            .with(JobKind.COVER_TRENCH, "cover the trench", "cover")
            .with(JobKind.LIFT_POTS, "lift before frost", "lift");

    public static final Vocabulary<TemperatureUnit> TEMPERATURE_UNITS = Vocabulary.<TemperatureUnit>of(
                    "unit of temperature")
            .with(TemperatureUnit.CELSIUS, "C", "celsius")
            .with(TemperatureUnit.FAHRENHEIT, "F", "fahrenheit");

    public static final Vocabulary<LengthUnit> LENGTH_UNITS = Vocabulary.<LengthUnit>of("unit of length")
            .with(LengthUnit.CENTIMETRES, "cm", "centimetres", "centimeters")
            .with(LengthUnit.INCHES, "in", "inches", "inch");

    public static final Vocabulary<FigureName> FIGURES = Vocabulary.<FigureName>of("figure")
            .with(FigureName.COLD, "weeks of cold", "cold weeks", "cold")
            .with(FigureName.COLD_LIMIT, "most weeks of cold", "cold-limit", "cold limit")
            .with(FigureName.COLD_BAND, "band of the cold", "cold-band", "cold band")
            .with(FigureName.DRY_COLD, "dry weeks", "dry-cold", "dry cold")
            .with(FigureName.POTTED_COLD, "potted weeks", "potted-cold", "potted cold")
            .with(FigureName.POT_FROST, "frost limit", "pot-frost", "pot frost")
            .with(FigureName.AFTER_COLD, "weeks to bloom", "after-cold", "after cold", "weeks after cold")
            .with(FigureName.COOL_ROOM, "days in the cool room", "cool-room", "cool room", "cool room days")
            .with(FigureName.COOL_ROOM_BAND, "band of the cool room", "cool-room-band", "cool room band")
            .with(FigureName.WARM_ROOM_BAND, "band of the warm room", "warm-room-band", "warm room band")
            .with(FigureName.BLOOM_WARMTH, "warmest in bloom", "bloom-warmth", "bloom warmth")
            .with(FigureName.IN_BLOOM, "days in bloom", "in-bloom", "in bloom", "bloom days")
            .with(FigureName.READY_SHOOT, "shoot when ready", "ready-shoot", "ready shoot")
            .with(FigureName.WARM_SHOOT, "shoot for the warm room", "warm-shoot", "warm shoot")
            .with(FigureName.PER_POT, "bulbs in a pot", "per-pot", "per pot")
            .with(FigureName.POT_WIDER, "pot wider than the bulb", "pot-wider", "pot wider")
            .with(FigureName.EXPOSED, "part of the bulb in the open", "exposed")
            .with(FigureName.HEIGHT, "height")
            .with(FigureName.SMALL_POT_HEIGHT, "height for small pots", "small-pot-height", "small pot height")
            .with(FigureName.SUCCESSION, "days between pots", "succession")
            .with(FigureName.CHECK, "days between checks", "check")
            .with(FigureName.FEED, "weeks between feedings", "feed", "feeding")
            .with(FigureName.REST, "weeks of rest", "rest", "rest weeks")
            .with(FigureName.REST_BAND, "band of the rest", "rest-band", "rest band");

    private Terms() {}
}
