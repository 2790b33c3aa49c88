// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.handbook.Remark;

/** What the handbook says in words, with the mark of whose word it is. */
final class RemarkWords {
    private RemarkWords() {}

    static String marked(Remark remark) {
        return remark.says() + mark(remark);
    }

    static String mark(Remark remark) {
        return OriginMarks.after(remark.sources());
    }
}
