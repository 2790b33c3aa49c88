// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

import java.util.List;
import java.util.Optional;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;

/** What a form asks, and what it makes of the answers. Sheets are values; the form around one keeps what is typed. */
public interface Sheet {

    /** Over the blanks. */
    String title(State state);

    /** Whether it is short enough to rise from the foot; else it takes the whole body. */
    boolean isSlip();

    List<Blank> blanks();

    /** The answers it opens with. */
    default Answers prefilled() {
        return Answers.NONE;
    }

    /** What the answers mean. */
    Reading read(State state, Answers answers);

    /** What the blank could say, the best first; empty where it asks for no name. */
    default List<Suggestion> suggestions(State state, Answers answers, Blank blank) {
        return List.of();
    }

    /** Two lines in the foot for the blank that is being filled in. */
    default Aside aside(State state, Answers answers, Blank blank) {
        return Aside.of("", "Tab goes on to the next blank.", "Nothing is kept until you record.");
    }

    /** A picture of what the answers mean, where there is one; it stands at the right, {@value #PICTURE_COLUMNS} columns wide. */
    default Optional<Widget> picture(State state, Reading reading) {
        return Optional.empty();
    }

    int PICTURE_COLUMNS = 26;

    /** What Enter does, in the foot. */
    default String recordWords() {
        return "record";
    }

    /** What opens once it is recorded. */
    default Sequel sequel() {
        return Sequel.NONE;
    }

    /** Under which name it waits when it is left half done. */
    Optional<String> draftName();

    /** Keys of its own, none of them a letter. */
    default List<Offer> offers(State state, Answers answers) {
        return List.of();
    }
}
