// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.regex.Pattern;
import sillbook.ui.screen.form.Blank;
import sillbook.words.line.PiecedLine.Piece;

/**
 * A blank, and how its answer stands in the line.
 *
 * @param piece the same with no answer yet
 * @param isWanted whether there is no entry without it
 * @param isPhrase whether any words will do, commas and brackets among them
 * @param makesNew whether something new may be made by its name here
 * @param hint what to write in it, for the foot
 */
record Part(Blank blank, Piece piece, boolean isWanted, boolean isPhrase, boolean makesNew, String hint) {
    private static final Pattern MARKS = Pattern.compile("[,;:()]");

    /** An answer of its own between commas, after the words that lead to it. */
    static Part of(String name, int columns, String lead, String hint) {
        return new Part(new Blank(name, columns), new Piece(", ", lead, "", ""), false, false, false, hint);
    }

    /** One that must be answered. */
    Part wanted() {
        return new Part(blank, piece, true, isPhrase, makesNew, hint);
    }

    /** One that follows what is before it without a comma. */
    Part following() {
        return after(" ");
    }

    /** One that follows what is before it after this mark. */
    Part after(String mark) {
        return new Part(blank, new Piece(mark, piece.lead(), "", piece.tail()), isWanted, isPhrase, makesNew, hint);
    }

    /** One with words after it. */
    Part with(String tail) {
        return new Part(blank, new Piece(piece.joint(), piece.lead(), "", tail), isWanted, isPhrase, makesNew, hint);
    }

    /** One that takes any words. */
    Part phrase() {
        return new Part(blank, piece, isWanted, true, makesNew, hint);
    }

    /** One that may name something not yet in the book. */
    Part making() {
        return new Part(blank, piece, isWanted, isPhrase, true, hint);
    }

    /** A phrase with a comma or a bracket in it is put in quotes, in which it is one word. */
    Piece answered(String answer) {
        if (isPhrase && MARKS.matcher(answer).find()) {
            return new Piece(piece.joint(), piece.lead() + '"', answer.replace('"', '\''), '"' + piece.tail());
        }
        return new Piece(piece.joint(), piece.lead(), answer, piece.tail());
    }
}
