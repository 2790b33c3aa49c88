// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.season.ColdCount;

class ColdWhyTest {
    private static final ColdCount EXACT = new ColdCount(80, 71.3, 71.3, 71.3, 80, 0);
    private static final Journal JOURNAL = winter().journal();

    @Test
    void aRangeIsSaidWhereThereIsOne() {
        assertThat(ColdWhy.total(EXACT)).isEqualTo("?71.3 days by 7 is 10.2 wk");
        assertThat(ColdWhy.total(new ColdCount(80, 70, 71.3, 74, 80, 0)))
                .isEqualTo("?71.3 days, 70 to 74 by 7 is 10.2 wk");
    }

    @Test
    void theRuleIsSaidInTheUnitOfTheJournal() {
        assertThat(new ColdWhy(JOURNAL).rule(EXACT)).contains("whole from 2 to 9 C, in part up to 13 C");
        assertThat(new ColdWhy(JOURNAL.with(List.of(new Edit.Put(Fahrenheit.SETTINGS)))).rule(EXACT))
                .contains("whole from 35.6 to 48.2 F, in part up to 55.4 F")
                .contains("from 32 to 35.6 F in part");
    }
}
