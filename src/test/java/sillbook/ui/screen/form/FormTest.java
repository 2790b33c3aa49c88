// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sillbook.change.Change;
import sillbook.change.Jot;
import sillbook.model.Day;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;

class FormTest {
    private static final Blank NAME = new Blank("Name", 12);
    private static final Blank COUNT = new Blank("Count", 4);

    /** A sheet that jots what is typed and wants a number. */
    private record Naming(boolean isSlip) implements Sheet {
        @Override
        public String title(State state) {
            return "Naming";
        }

        @Override
        public List<Blank> blanks() {
            return List.of(NAME, COUNT);
        }

        @Override
        public Reading read(State state, Answers answers) {
            boolean number = answers.text(COUNT).chars().allMatch(Character::isDigit);
            Remark remark = number
                    ? Remark.understood("bulbs")
                    : Remark.wrong("a number", "'" + answers.text(COUNT) + "' is no number. Write one, as 5.");
            return Reading.NOTHING
                    .with(COUNT, remark)
                    .with(new Note("Then", "it flowers"))
                    .meaning(jot(answers));
        }

        @Override
        public List<Suggestion> suggestions(State state, Answers answers, Blank blank) {
            return blank.equals(NAME)
                    ? Stream.of("Inkwell", "Linen Parade")
                            .map(name -> Suggestion.of(name, "hyacinth"))
                            .toList()
                    : List.of();
        }

        @Override
        public Optional<String> draftName() {
            return Optional.of("naming");
        }
    }

    private record Empty() implements Layer {
        @Override
        public Look look(State state, Size body) {
            return Look.body((area, cells) -> {});
        }

        @Override
        public List<Offer> offers(State state) {
            return List.of();
        }
    }

    private static Change jot(Answers answers) {
        return new Jot(List.of(), answers.text(NAME) + " " + answers.text(COUNT), Day.on(Desk.TODAY));
    }

    private static Desk desk() {
        return Desk.of(new Empty()).lay(Form.of(new Naming(false)));
    }

    private static Form form(Desk desk) {
        return (Form) desk.state().top();
    }

    private static Answers answers(String name, String count) {
        return Answers.NONE.with(NAME, name).with(COUNT, count);
    }

    @Test
    void looksLikeAPaperForm() {
        assertThat(desk().type("Lin").lines().subList(3, 9))
                .containsExactly(
                        " Naming",
                        "▸ Name       Lin_________",
                        "             ▸ Inkwell       hyacinth",
                        "               Linen Parade  hyacinth",
                        "  Count      ____  bulbs",
                        " Then        it flowers");
    }

    @Test
    void risesFromTheFootAsASlip() {
        Desk desk = Desk.of(new Empty()).lay(Form.of(new Naming(true)));
        assertThat(desk.line(15)).startsWith("⎽⎽ Naming ⎽");
        assertThat(desk.line(17)).isEqualTo("▸   Name     ____________");
        assertThat(desk.line(18)).isEqualTo("    Count    ____  bulbs");
        assertThat(desk.line(19)).isEqualTo(" Then        it flowers");
    }

    @Test
    void takesASuggestionAndGoesOnWithTab() {
        Form form = form(desk().type("in").press("Down", "Tab"));
        assertThat(form.answers()).isEqualTo(answers("Linen Parade", ""));
        assertThat(form.blank()).isEqualTo(COUNT);
    }

    @Test
    void takesASuggestionAndStaysWithEnter() {
        Desk desk = desk().type("in").press("Enter");
        assertThat(form(desk).answers()).isEqualTo(answers("Inkwell", ""));
        assertThat(form(desk).blank()).isEqualTo(NAME);
        assertThat(desk.effects()).isEmpty();
    }

    @Test
    void goesRoundItsBlanks() {
        assertThat(form(desk().press("Down")).blank()).isEqualTo(COUNT);
        assertThat(form(desk().press("Tab", "Tab")).blank()).isEqualTo(NAME);
        assertThat(form(desk().press("Shift-Tab")).blank()).isEqualTo(COUNT);
        assertThat(form(desk().press("Down", "Up")).blank()).isEqualTo(NAME);
    }

    @Test
    void recordsWhatItMeans() {
        Desk desk = desk().press("Down").type("5").press("Enter");
        assertThat(desk.effects()).containsExactly(new Effect.CarryOut(jot(answers("", "5"))));
    }

    @Test
    void goesToTheBlankThatWantsSomething() {
        Desk desk = desk().press("Down").type("x").press("Up", "Enter");
        assertThat(form(desk).blank()).isEqualTo(COUNT);
        assertThat(desk.line(6)).isEqualTo("▸ Count      x___  ! a number");
        assertThat(desk.line(22)).isEqualTo(" ! 'x' is no number. Write one, as 5.");
        assertThat(desk.effects()).isEmpty();
    }

    @Test
    void asksBeforeItLosesWhatIsTyped() {
        Desk desk = desk().type("Ink").press("Esc");
        assertThat(desk.line(22)).isEqualTo(" Leave it half done? Enter keeps the draft, X drops it, Esc goes on.");
        assertThat(form(desk.press("Esc")).answers()).isEqualTo(answers("Ink", ""));
        desk.press("Esc", "Enter");
        assertThat(desk.state().layers().over()).isEmpty();
        assertThat(form(desk.lay(Form.of(new Naming(false)))).answers()).isEqualTo(answers("Ink", ""));
        desk.press("Esc", "x");
        assertThat(form(desk.lay(Form.of(new Naming(false)))).answers()).isEqualTo(answers("", ""));
    }

    @Test
    void leavesWithoutAQuestionWhenNothingIsTyped() {
        assertThat(desk().press("Esc").state().layers().over()).isEmpty();
    }

    @Test
    void takesPastedTextAsText() {
        Desk desk = desk().tell(new sillbook.ui.screen.Message.Pasted("Night\nMarbles"));
        assertThat(form(desk).answers()).isEqualTo(answers("Night Marbles", ""));
    }
}
