// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import sillbook.handbook.Remark;

/** What the handbook says in words, with the mark of whose word it is. */
final class RemarkWords {
    /** Of what the handbook says. */
    static final String MARK = " (▫)";

    private static final List<String> COMMON_PRACTICE = List.of("common-practice");

    private RemarkWords() {}

    static String marked(Remark remark) {
        return remark.says() + mark(remark);
    }

    /** Where nothing is published the handbook's mark would say too much. */
    static String mark(Remark remark) {
        return remark.sources().equals(COMMON_PRACTICE) ? " (common practice)" : MARK;
    }
}
