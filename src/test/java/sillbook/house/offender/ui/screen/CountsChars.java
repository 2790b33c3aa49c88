// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.ui.screen;

import java.util.List;

record CountsChars(List<String> words) {
    int widest() {
        return words.stream().mapToInt(String::length).max().orElse(0);
    }

    String start(String word) {
        return word.substring(0, 1) + word.charAt(1);
    }

    CharSequence end(CharSequence word) {
        return word.subSequence(1, word.length());
    }
}
