// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Temperature;
import sillbook.model.Thermometer;
import sillbook.model.Thermometer.IceTest;

/** The thermometers. */
final class ThermometerRows implements Mapping<Thermometer> {
    private static final Table TABLE = Table.of(
            "thermometer", "id", "place", "lies", "ice", "ice_written", "tried", "tried_earliest", "tried_latest");

    @Override
    public Class<Thermometer> type() {
        return Thermometer.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(Thermometer thermometer, Values row) {
        row.id(thermometer.id())
                .id(thermometer.place())
                .text(thermometer.lies())
                .optionalTemperature(thermometer.ice().map(IceTest::read))
                .optionalDay(thermometer.ice().map(IceTest::on));
    }

    @Override
    public Thermometer read(Row row) throws SQLException {
        return new Thermometer(row.id(), row.id(), row.text(), ice(row.optionalTemperature(), row.optionalDay()));
    }

    private static Optional<IceTest> ice(Optional<Temperature> read, Optional<Day> on) {
        return read.flatMap(temperature -> on.map(day -> new IceTest(temperature, day)));
    }
}
