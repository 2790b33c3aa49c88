// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import sillbook.model.DateOrder;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerFormat.DecimalSign;
import sillbook.model.LoggerFormat.Separator;
import sillbook.model.Settings.TemperatureUnit;

/**
 * What the file of a thermometer was understood as, before any of it is kept.
 *
 * @param linesBefore how many lines stand before the heading, or before the readings where there is none
 * @param hasHeading whether a line names the columns
 * @param temperature the column that is read; empty while it is not known which
 * @param temperatures every column that may be meant
 * @param unit of every reading whose own line names none
 * @param rowsNameUnit whether lines name their unit
 * @param devices all whose readings the file has, where it tells them apart
 * @param device whose readings are meant; empty where it does not matter, or is not known
 * @param toldBefore what of all this rests on what the grower said of an earlier file like it
 */
public record Understood(
        TextCode code,
        int linesBefore,
        boolean hasHeading,
        Found<Separator> separator,
        Found<DecimalSign> decimalSign,
        When when,
        Dates dates,
        Clock clock,
        Optional<Column> temperature,
        List<Column> temperatures,
        Found<TemperatureUnit> unit,
        boolean rowsNameUnit,
        List<String> devices,
        Optional<String> device,
        LoggerFormat toldBefore) {

    public Understood {
        temperatures = List.copyOf(temperatures);
        devices = List.copyOf(devices);
    }

    /** The codes in which text comes. */
    public enum TextCode {
        UTF_8,
        UTF_16,
        LATIN_1
    }

    /** What something rests on. */
    public enum Basis {
        /** The grower said it, now or of an earlier file like it. */
        TOLD,
        /** The file says it in words. */
        STATED,
        /** The file's lines can be read in no other way. */
        SEEN,
        /** Nothing says it. */
        ASSUMED
    }

    /** Something, and what it rests on. */
    public record Found<T>(T value, Basis basis) {}

    /**
     * A column.
     *
     * @param number counted from 1
     * @param name as the file's heading has it; empty where there is none
     */
    public record Column(int number, String name) {}

    /** Where the instants stand: in one column, or in two. */
    public record When(Form form, List<Column> columns) {
        public When {
            columns = List.copyOf(columns);
        }
    }

    /** How instants are written. */
    public enum Form {
        /** Date and time of day in one column. */
        TOGETHER,
        /** The date in one, the time of day in another. */
        APART,
        /** Seconds, or thousandths of them, since 1970-01-01T00:00Z. */
        UNIX
    }

    /**
     * The order of day, month and year.
     *
     * @param order empty while it is not known; also where instants are no dates
     * @param proof the line that can be read in this order only, where one was needed
     * @param possible the orders in which every date can be read
     */
    public record Dates(Optional<Found<DateOrder>> order, Optional<Proof> proof, Set<DateOrder> possible) {
        public Dates {
            possible = Set.copyOf(new TreeSet<>(possible));
        }
    }

    /**
     * A line that leaves one order only.
     *
     * @param written its date, as it stands there
     * @param follows the date of the line before, where only both together leave one order
     */
    public record Proof(int line, String written, Optional<String> follows) {}

    /**
     * The clock of the thermometer.
     *
     * @param zone in which instants are read that say nothing themselves
     * @param rowsNameZone whether instants say how far they are from Greenwich
     * @param isHalfDays whether it goes to twelve only, with AM and PM
     * @param staysBehind whether it goes through an hour that clocks of that zone leave out, and so never changes to summer time
     */
    public record Clock(Found<ZoneId> zone, boolean rowsNameZone, boolean isHalfDays, boolean staysBehind) {}

    /** What the file leaves open and nobody may guess. */
    public enum Question {
        DATES,
        COLUMN,
        DEVICE
    }

    /** What must be answered before anything can be kept. */
    public List<Question> questions() {
        List<Question> open = new ArrayList<>();
        if (when.form() != Form.UNIX && dates.order().isEmpty()) {
            open.add(Question.DATES);
        }
        if (temperature.isEmpty()) {
            open.add(Question.COLUMN);
        }
        if (devices.size() > 1 && device.isEmpty()) {
            open.add(Question.DEVICE);
        }
        return open;
    }
}
