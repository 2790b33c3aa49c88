// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Comparing text as people search for it: without accents, case and letters' special forms. */
public final class Fold {
    private Fold() {}

    /**
     * The text reduced to what find compares: {@code "Écru"} and {@code "ecru"} both become {@code "ecru"}; {@code ß æ œ ø ł đ þ ı} become the
     * letters they are written with elsewhere, curled quotation marks straight ones.
     */
    public static String of(String text) {
        return isAscii(text) ? text.toLowerCase(Locale.ROOT) : slowly(text);
    }

    /** Nearly always; a plain loop, because a line typed is folded word by word against every name there is. */
    private static boolean isAscii(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) >= 0x80) {
                return false;
            }
        }
        return true;
    }

    private static String slowly(String text) {
        StringBuilder folded = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFKD)
                .codePoints()
                .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
                .forEach(c -> folded.append(plainly(c)));
        return folded.toString();
    }

    public static boolean contains(String text, String sought) {
        return of(text).contains(of(sought));
    }

    /** Where the sought text stands in the other as it is shown, in columns; empty for an empty search. */
    public static List<Span> find(String text, String sought) {
        String wanted = of(sought);
        if (wanted.isEmpty()) {
            return List.of();
        }
        Index index = Index.of(Safe.text(text));
        List<Span> spans = new ArrayList<>();
        for (int at = index.folded().indexOf(wanted);
                at >= 0;
                at = index.folded().indexOf(wanted, at + wanted.length())) {
            spans.add(index.span(at, at + wanted.length()));
        }
        return List.copyOf(spans);
    }

    private static String plainly(int codePoint) {
        return switch (Character.toLowerCase(codePoint)) {
            case 'ß' -> "ss";
            case 'æ' -> "ae";
            case 'œ' -> "oe";
            case 'ø' -> "o";
            case 'ł' -> "l";
            case 'đ', 'ð' -> "d";
            case 'þ' -> "th";
            case 'ı' -> "i";
            case '‘', '’', '‚' -> "'";
            case '“', '”', '„' -> "\"";
            default -> Character.toString(Character.toLowerCase(codePoint));
        };
    }

    /** The folded text, and for each of its UTF-16 units the columns of the character it came from. */
    private record Index(String folded, List<Span> origins) {
        static Index of(String safe) {
            StringBuilder folded = new StringBuilder();
            List<Span> origins = new ArrayList<>();
            int column = 0;
            for (int codePoint : safe.codePoints().toArray()) {
                Span origin = new Span(column, column + Width.of(codePoint));
                String letters = Fold.of(Character.toString(codePoint));
                folded.append(letters);
                origins.addAll(Collections.nCopies(letters.length(), origin));
                column = origin.toExclusive();
            }
            return new Index(folded.toString(), origins);
        }

        Span span(int fromInclusive, int toExclusive) {
            return new Span(
                    origins.get(fromInclusive).fromInclusive(),
                    origins.get(toExclusive - 1).toExclusive());
        }
    }
}
