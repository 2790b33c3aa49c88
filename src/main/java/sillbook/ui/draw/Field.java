// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.text.Clusters;

/**
 * One line of text being typed. It moves and deletes by what a person calls a character, so an accent never comes off its letter.
 *
 * @param clusters the text, a character each
 * @param caret how many characters stand before the insertion point
 * @param dropped what Ctrl-U took last and would bring back; empty when there is nothing
 */
public record Field(List<String> clusters, int caret, List<String> dropped) {
    public static final Field EMPTY = of("");

    public Field {
        clusters = List.copyOf(clusters);
        dropped = List.copyOf(dropped);
        if (caret < 0 || caret > clusters.size()) {
            throw new IllegalArgumentException(
                    "no place " + caret + " in a text of " + clusters.size() + " characters");
        }
    }

    /** A field that holds this text, with the insertion point at its end. */
    public static Field of(String text) {
        List<String> clusters = Clusters.of(asOneLine(text));
        return new Field(clusters, clusters.size(), List.of());
    }

    public String text() {
        return String.join("", clusters);
    }

    /** The text before the insertion point. */
    public String before() {
        return String.join("", clusters.subList(0, caret));
    }

    /** The text after the insertion point. */
    public String after() {
        return String.join("", clusters.subList(caret, clusters.size()));
    }

    public boolean isEmpty() {
        return clusters.isEmpty();
    }

    /** Puts text in at the insertion point: line ends become spaces, other controls are dropped. */
    public Field insert(String text) {
        List<String> front = Clusters.of(before() + asOneLine(text));
        List<String> all = Clusters.of(String.join("", front) + after());
        return new Field(all, Math.min(front.size(), all.size()), List.of());
    }

    /** The field after a key, or empty when the key means nothing to a field and is the screen's. */
    public Optional<Field> press(Key key) {
        if (key instanceof Key.Typed typed) {
            return Optional.of(insert(Character.toString(typed.codePoint())));
        }
        if (key instanceof Key.Control control) {
            return pressControl(control.letter());
        }
        Key.Named named = (Key.Named) key;
        return named.shift() ? Optional.empty() : named.ctrl() ? pressWithCtrl(named.name()) : pressNamed(named.name());
    }

    private Optional<Field> pressControl(char letter) {
        return switch (letter) {
            case 'w' -> Optional.of(delete(wordStart(), caret));
            case 'u' -> Optional.of(dropOrRestore());
            default -> Optional.empty();
        };
    }

    private Optional<Field> pressWithCtrl(Key.Name name) {
        return switch (name) {
            case LEFT -> Optional.of(at(wordStart()));
            case RIGHT -> Optional.of(at(wordEnd()));
            default -> Optional.empty();
        };
    }

    private Optional<Field> pressNamed(Key.Name name) {
        return switch (name) {
            case LEFT -> Optional.of(at(Math.max(0, caret - 1)));
            case RIGHT -> Optional.of(at(Math.min(clusters.size(), caret + 1)));
            case HOME -> Optional.of(at(0));
            case END -> Optional.of(at(clusters.size()));
            case BACKSPACE -> Optional.of(delete(Math.max(0, caret - 1), caret));
            case DELETE -> Optional.of(delete(caret, Math.min(clusters.size(), caret + 1)));
            default -> Optional.empty();
        };
    }

    private Field at(int place) {
        return new Field(clusters, place, dropped);
    }

    private Field delete(int fromInclusive, int toExclusive) {
        List<String> rest = new ArrayList<>(clusters.subList(0, fromInclusive));
        rest.addAll(clusters.subList(toExclusive, clusters.size()));
        return new Field(rest, fromInclusive, fromInclusive == toExclusive ? dropped : List.of());
    }

    private Field dropOrRestore() {
        return isEmpty() ? new Field(dropped, dropped.size(), List.of()) : new Field(List.of(), 0, clusters);
    }

    private int wordStart() {
        int start = caret;
        while (start > 0 && isSpace(start - 1)) {
            start--;
        }
        while (start > 0 && !isSpace(start - 1)) {
            start--;
        }
        return start;
    }

    private int wordEnd() {
        int end = caret;
        while (end < clusters.size() && isSpace(end)) {
            end++;
        }
        while (end < clusters.size() && !isSpace(end)) {
            end++;
        }
        return end;
    }

    private boolean isSpace(int index) {
        return clusters.get(index).isBlank();
    }

    private static String asOneLine(String text) {
        StringBuilder line = new StringBuilder();
        text.replaceAll("\\R|\t", " ").codePoints().filter(Field::isText).forEach(line::appendCodePoint);
        return line.toString();
    }

    /** Controls and direction marks are none; the two joiners are, some scripts and emoji are spelt with them. */
    private static boolean isText(int codePoint) {
        boolean joiner = codePoint == 0x200C || codePoint == 0x200D;
        return joiner || !(Character.getType(codePoint) == Character.FORMAT || Character.isISOControl(codePoint));
    }
}
