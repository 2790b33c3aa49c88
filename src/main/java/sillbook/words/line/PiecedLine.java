// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A line put together from the answers of a form, so that a form and a line can do exactly the same.
 *
 * @param line what is read
 * @param answers where each piece's answer stands in it; empty stretches where nothing is answered
 */
public record PiecedLine(String line, List<Stretch> answers) {
    public PiecedLine {
        answers = List.copyOf(answers);
    }

    /**
     * One answer, and how it stands in the line.
     *
     * @param joint between it and what is before it: a comma, or only a space
     * @param lead words before the answer: {@code check every}; may be empty
     * @param tail words after it; may be empty
     */
    public record Piece(String joint, String lead, String answer, String tail) {}

    /**
     * Something a piece's answer may become.
     *
     * @param isNew whether it would make something new, which then wants its kind or sort in brackets
     */
    public record Offered(String answer, String shown, String aside, boolean isNew) {}

    /** The line that begins with these words and goes on with each piece that is answered. */
    public static PiecedLine of(String begin, List<Piece> pieces) {
        StringBuilder line = new StringBuilder(begin);
        List<Stretch> answers = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.answer().isBlank()) {
                answers.add(new Stretch(line.length(), line.length()));
                continue;
            }
            line.append(line.isEmpty() ? "" : piece.joint()).append(piece.lead());
            int from = line.length();
            line.append(piece.answer());
            answers.add(new Stretch(from, line.length()));
            line.append(piece.tail());
        }
        return new PiecedLine(line.toString(), answers);
    }

    public LineReading read(Bench bench) {
        return QuickLine.read(line, bench);
    }

    /** The piece in whose answer the stretch begins. */
    public OptionalInt piece(Stretch stretch) {
        return IntStream.range(0, answers.size())
                .filter(piece -> answers.get(piece).contains(stretch.fromInclusive()))
                .findFirst();
    }

    /** What a piece's answer may become, the best first. */
    public List<Offered> offers(int piece, Bench bench) {
        Stretch answer = answers.get(piece);
        return QuickLine.read(line, answer.toExclusive(), bench).completions().stream()
                .filter(completion -> completion.replaces().fromInclusive() >= answer.fromInclusive())
                .map(completion -> new Offered(
                        new Stretch(
                                                answer.fromInclusive(),
                                                completion.replaces().fromInclusive())
                                        .of(line)
                                + completion.text(),
                        completion.shown(),
                        completion.aside(),
                        completion.text().endsWith("(")))
                .toList();
    }
}
