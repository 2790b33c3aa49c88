// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import sillbook.words.Provisos;
import sillbook.words.Warned;

/** What every JSON answer ends with, whether or not there is any: warnings, and what was taken for granted. */
final class Answer {
    private Answer() {}

    static String write(Fields fields, Provisos provisos) {
        return fields.list("warnings", provisos.warnings(), Answer::warning)
                .texts("assumed", provisos.assumed())
                .write();
    }

    static String write(Fields fields) {
        return write(fields, Provisos.NONE);
    }

    private static Fields warning(Warned warning) {
        return new Fields().text("code", warning.code()).text("says", warning.says());
    }
}
