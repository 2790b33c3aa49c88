// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

/**
 * What the word being typed may become.
 *
 * @param replaces the part of the line it takes the place of
 * @param text what then stands there
 * @param shown how it is offered: {@code garage fridge}, {@code make 'Lin' a new variety}
 * @param aside what more there is to say of it: {@code 6 of 9 stand there}; may be empty
 */
public record Completion(Stretch replaces, String text, String shown, String aside) {
    /** The line with this taken; the caret belongs at {@link #caret()}. */
    public String applyTo(String line) {
        return line.substring(0, replaces.fromInclusive()) + text + line.substring(replaces.toExclusive());
    }

    /** Where typing goes on. */
    public int caret() {
        return replaces.fromInclusive() + text.length();
    }
}
