// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter.NopIndenter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import sillbook.text.Safe;

/**
 * JSON as Sillbook writes it (RFC 8259): two columns an indent, line feeds on every system, lists of words on one line,
 * and whatever a terminal must not see as an escape.
 */
final class JsonText {
    private static final JsonMapper MAPPER = new JsonMapper();

    private JsonText() {}

    static String of(JsonNode node) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = MAPPER.createGenerator(text)) {
            generator.setCharacterEscapes(new Escapes());
            generator.setPrettyPrinter(printer());
            MAPPER.writeTree(generator, node);
        } catch (IOException impossible) {
            throw new UncheckedIOException("memory could not be written", impossible);
        }
        return text.toString();
    }

    private static DefaultPrettyPrinter printer() {
        Separators separators = Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Spacing.AFTER)
                .withArrayValueSpacing(Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator("");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        printer.indentArraysWith(new NopIndenter());
        return printer;
    }

    /** Beside what JSON itself escapes, the characters that {@link Safe} would not let stand. */
    private static final class Escapes extends CharacterEscapes {
        private static final long serialVersionUID = 1L;
        private static final int DELETE = 0x7F;

        private static final int[] ASCII = ascii();

        private static int[] ascii() {
            int[] escapes = standardAsciiEscapesForJSON();
            escapes[DELETE] = ESCAPE_STANDARD;
            return escapes;
        }

        @Override
        public int[] getEscapeCodesForAscii() {
            return ASCII.clone();
        }

        @Override
        public @Nullable SerializableString getEscapeSequence(int character) {
            String raw = Character.toString(character);
            boolean stands =
                    Character.isSurrogate((char) character) || Safe.text(raw).equals(raw);
            return stands ? null : new SerializedString("\\u" + fourDigits(character));
        }

        private static String fourDigits(int character) {
            String digits = Integer.toHexString(character).toUpperCase(Locale.ROOT);
            return "0".repeat(4 - digits.length()) + digits;
        }
    }
}
