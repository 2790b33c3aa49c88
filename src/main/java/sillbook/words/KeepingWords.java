// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.handbook.Handbook;
import sillbook.handbook.Remark;
import sillbook.handbook.Topic;
import sillbook.model.Kind;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Stage;
import sillbook.season.PotFigures;
import sillbook.season.PotNow;
import sillbook.text.Initial;

/**
 * How a pot is kept in the stage it is in, and by what sign that ends: the handbook's words; and how its water is kept, by the way it
 * is grown.
 */
public record KeepingWords(Handbook handbook, LengthUnit lengths, LocalDate today) {

    /** One text a line; of a mixed pot for each of its kinds. Of potting mix in a drained pot empty before the cold is over. */
    public List<String> say(PotNow pot) {
        Stream<String> ofKinds = pot.figures().varieties().stream()
                .map(PotFigures.OfVariety::kind)
                .distinct()
                .flatMap(kind -> say(kind, pot.life().stage()));
        return Stream.concat(ofKinds, new WaterKeeping(pot, lengths, today).say().stream())
                .distinct()
                .toList();
    }

    private Stream<String> say(Kind kind, Stage stage) {
        return switch (stage) {
            case COOL_ROOM ->
                Stream.of(said(kind, Topic.COOL_ROOM_LIGHT), moveOn(kind)).flatMap(Optional::stream);
            case WARM_ROOM ->
                Stream.of(said(kind, Topic.WARM_ROOM_LIGHT), atColour(kind)).flatMap(Optional::stream);
            case IN_BLOOM -> said(kind, Topic.BLOOM_CARE).stream();
            case AFTER_BLOOM -> handbook.remarks(kind, Topic.AFTERCARE).stream().map(RemarkWords::marked);
            case WAITING, COLD, DONE -> Stream.empty();
        };
    }

    private Optional<String> said(Kind kind, Topic topic) {
        return first(kind, topic).map(RemarkWords::marked);
    }

    private Optional<String> moveOn(Kind kind) {
        return first(kind, Topic.COOL_ROOM_END)
                .map(end -> "Move on when " + clause(end) + RemarkWords.mark(end)
                        + ", or buds show. Days only where nobody looked.");
    }

    private Optional<String> atColour(Kind kind) {
        return first(kind, Topic.WARM_ROOM_END)
                .flatMap(end -> first(kind, Topic.BLOOM_CARE)
                        .map(care ->
                                "Once " + clause(end) + ": " + Initial.small(care.says()) + RemarkWords.mark(care)));
    }

    /** The nearest word there is: of its class, its kind, hardy bulbs. */
    private Optional<Remark> first(Kind kind, Topic topic) {
        return handbook.remarks(kind, topic).stream().findFirst();
    }

    private static String clause(Remark remark) {
        return Initial.small(remark.says()).replaceFirst("[.]$", "");
    }
}
