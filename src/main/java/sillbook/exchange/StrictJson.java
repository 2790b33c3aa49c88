// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.function.Function;
import sillbook.words.Heard;

/** JSON that says each thing once, and nothing after its end. */
final class StrictJson {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private StrictJson() {}

    /**
     * What the bytes of a file mean, or where they are misread.
     *
     * @param meaning may throw {@link JsonObject.Misread}
     */
    static <T> Heard<T> read(byte[] bytes, Function<JsonNode, Heard<T>> meaning) {
        try {
            return meaning.apply(MAPPER.readTree(bytes));
        } catch (JsonObject.Misread misread) {
            return Heard.not("not understood", misread.sentence());
        } catch (JsonProcessingException otherwise) {
            return Heard.not("no JSON", sentence(Optional.ofNullable(otherwise.getLocation())));
        } catch (IOException impossible) {
            throw new UncheckedIOException("memory could not be read", impossible);
        }
    }

    /** Brackets within brackets and numbers without end have no place. */
    private static String sentence(Optional<JsonLocation> where) {
        return where.map(at ->
                        "It is no JSON: line " + at.getLineNr() + ", column " + at.getColumnNr() + " cannot be read.")
                .orElse("It is JSON of a sort that nobody writes: too deep, or with a number too long. Name another.");
    }
}
