// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Optional;
import sillbook.words.Heard;

/** A whole phrase of whatever words, where no other sense is made of all of it; a bare number says too little to be one. */
final class FreePhrase implements Sense<String> {
    static final FreePhrase SENSE = new FreePhrase();

    private FreePhrase() {}

    @Override
    public Optional<Found<String>> at(Written line, int from, Bench bench) {
        int end = line.phraseEnd(from);
        return end > from && line.isPhraseStart(from) && !line.text(from, end).matches("\\d+([.,]\\d+)?")
                ? Optional.of(new Found<>(end, Heard.as(line.text(from, end)), Sure.NEW))
                : Optional.empty();
    }
}
