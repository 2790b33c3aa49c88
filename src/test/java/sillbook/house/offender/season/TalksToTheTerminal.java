// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.season;

interface TalksToTheTerminal {
    default void say(String words) {
        System.out.println(words);
    }
}
