// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import sillbook.words.Heard;

/**
 * Words that make sense.
 *
 * @param end the word after the last of them
 * @param meaning what they mean, or why they are wrong although they are surely meant so
 */
record Found<T>(int end, Heard<T> meaning, Sure sure) {
    static <T> Found<T> whole(int end, T meaning) {
        return new Found<>(end, Heard.as(meaning), Sure.WHOLE);
    }
}
