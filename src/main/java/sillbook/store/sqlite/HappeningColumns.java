// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.util.Optional;
import sillbook.model.Findings;
import sillbook.model.Findings.Firmness;
import sillbook.model.Findings.Growth;
import sillbook.model.Findings.Moisture;
import sillbook.model.Findings.Roots;
import sillbook.model.Findings.Trouble;
import sillbook.model.Findings.Water;
import sillbook.model.Happening;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.JobKind;
import sillbook.model.Stage;

/** What happened: its sort, and those of the columns behind it that this sort uses. */
final class HappeningColumns {
    private HappeningColumns() {}

    /** The sorts of happening as the file names them, each with the reading of its columns. */
    private enum Sort {
        POTTED {
            @Override
            Happening read(Row row) {
                return new Happening.Potted();
            }
        },
        MOVED {
            @Override
            Happening read(Row row) throws SQLException {
                return new Happening.Moved(at(row, "place").id(), row.word(Stage.class));
            }
        },
        CHECKED {
            @Override
            Happening read(Row row) throws SQLException {
                String note = at(row, "text").text();
                at(row, "moisture");
                return new Happening.Checked(new Findings(
                        row.optionalWord(Moisture.class),
                        row.flag(),
                        row.optionalWord(Water.class),
                        row.optionalWord(Roots.class),
                        row.optionalLength(),
                        row.optionalLength(),
                        row.optionalWord(Firmness.class),
                        row.words(Growth.class),
                        row.words(Trouble.class),
                        note));
            }
        },
        FLOWERED {
            @Override
            Happening read(Row row) throws SQLException {
                return new Happening.Flowered(at(row, "point").word(BloomPoint.class), row.optionalId());
            }
        },
        CARED {
            @Override
            Happening read(Row row) throws SQLException {
                return new Happening.Cared(at(row, "care").word(Care.class));
            }
        },
        CLOSED {
            @Override
            Happening read(Row row) throws SQLException {
                return new Happening.Closed(
                        at(row, "ending").word(End.class), at(row, "text").text());
            }
        },
        PUT_OFF {
            @Override
            Happening read(Row row) throws SQLException {
                return new Happening.PutOff(
                        at(row, "job").word(JobKind.class),
                        row.date(),
                        at(row, "text").text());
            }
        },
        LEFT_OUT {
            @Override
            Happening read(Row row) throws SQLException {
                return new Happening.LeftOut(
                        at(row, "job").word(JobKind.class), at(row, "text").text());
            }
        },
        JOTTED {
            @Override
            Happening read(Row row) throws SQLException {
                return new Happening.Jotted(at(row, "text").text());
            }
        },
        DISPLAYED {
            @Override
            Happening read(Row row) throws SQLException {
                String display = at(row, "text").text();
                return new Happening.Displayed(display.isEmpty() ? Optional.empty() : Optional.of(display));
            }
        };

        abstract Happening read(Row row) throws SQLException;

        private static Row at(Row row, String column) {
            return row.at(EventRows.TABLE, column);
        }
    }

    static Happening read(Row row) throws SQLException {
        return row.word(Sort.class).read(row);
    }

    /** Writes the sort, and the columns it uses. */
    record Writing(Values row) implements Happening.Cases<Values> {
        private Values sort(Sort sort) {
            return row.at("what").word(sort);
        }

        @Override
        public Values potted(Happening.Potted happening) {
            return sort(Sort.POTTED);
        }

        @Override
        public Values moved(Happening.Moved happening) {
            return sort(Sort.MOVED).at("place").id(happening.place()).word(happening.stage());
        }

        @Override
        public Values checked(Happening.Checked happening) {
            Findings findings = happening.findings();
            return sort(Sort.CHECKED)
                    .text(findings.note())
                    .at("moisture")
                    .optionalWord(findings.moisture())
                    .flag(findings.watered())
                    .optionalWord(findings.water())
                    .optionalWord(findings.roots())
                    .optionalLength(findings.rootLength())
                    .optionalLength(findings.shoot())
                    .optionalWord(findings.firmness())
                    .words(findings.growth())
                    .words(findings.troubles());
        }

        @Override
        public Values flowered(Happening.Flowered happening) {
            return sort(Sort.FLOWERED).at("point").word(happening.point()).optionalId(happening.variety());
        }

        @Override
        public Values cared(Happening.Cared happening) {
            return sort(Sort.CARED).at("care").word(happening.care());
        }

        @Override
        public Values closed(Happening.Closed happening) {
            return sort(Sort.CLOSED).text(happening.note()).at("ending").word(happening.end());
        }

        @Override
        public Values putOff(Happening.PutOff happening) {
            return sort(Sort.PUT_OFF)
                    .text(happening.reason())
                    .at("job")
                    .word(happening.job())
                    .date(happening.until());
        }

        @Override
        public Values leftOut(Happening.LeftOut happening) {
            return sort(Sort.LEFT_OUT).text(happening.reason()).at("job").word(happening.job());
        }

        @Override
        public Values jotted(Happening.Jotted happening) {
            return sort(Sort.JOTTED).text(happening.text());
        }

        @Override
        public Values displayed(Happening.Displayed happening) {
            return sort(Sort.DISPLAYED).text(happening.display().orElse(""));
        }
    }
}
