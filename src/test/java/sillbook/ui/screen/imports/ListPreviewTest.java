// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sillbook.change.Together;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Variety;
import sillbook.ui.screen.Copy;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;
import sillbook.words.list.Table;

class ListPreviewTest {
    private static final List<String> HEADER =
            List.of("name", "kind", "height", "colour", "scent", "note", "shelf", "page");
    private static final String[] RIGHT = {
        "Thimble Post;tulip triumph;40;white;none;;A;12",
        "Bluejar;daffodil 6;20;pale yellow;light;from the autumn market, wants the sunny end of the sill;A;14",
        "Inkwell;;;;;;B;",
        "Marrow Lane;tulip;45;;;;B;"
    };

    private static Table table(String... lines) {
        List<Table.Row> rows = new ArrayList<>();
        for (String line : lines) {
            rows.add(new Table.Row(rows.size() + 2, List.of(line.split(";", -1))));
        }
        return new Table(HEADER, rows);
    }

    private static Message.TableRead read(String... lines) {
        return new Message.TableRead("autumn.csv", table(lines));
    }

    private static Desk asked() {
        return Desk.over(GrowersWinter.told().journal())
                .press("4", "i")
                .type("~/autumn.csv")
                .press("Enter");
    }

    private static Desk wrong() {
        return asked().tell(read(Stream.concat(Stream.of(RIGHT), Stream.of("Tin Starling;turnip;tall;;;;;"))
                .toArray(String[]::new)));
    }

    @Test
    void theFileIsAskedFor() {
        Desk desk = Desk.over(GrowersWinter.told().journal()).press("4", "i");

        Golden.check("import-file", desk.state());
        assertThat(desk.press("Enter").line(22)).contains("Look at it is off just now: no file is named yet.");
        assertThat(asked().effects()).containsExactly(new Effect.ReadTable("~/autumn.csv"));
    }

    @Test
    void looksAsDrawn() {
        Golden.check("import", asked().tell(read(RIGHT)).press("Down").state());
    }

    @Test
    void whatIsWrongIsSeenFirst() {
        Golden.check("import-wrong", wrong().state());
    }

    @Test
    void enterImportsAllOfItAsOneStepAndThePageIsSeenAgain() {
        Desk desk = asked().tell(read(RIGHT)).press("Enter");

        assertThat(desk.effects()).singleElement().isInstanceOfSatisfying(Effect.CarryOut.class, effect -> {
            assertThat(effect.change()).isInstanceOf(Together.class);
            assertThat(((Together) effect.change()).name()).isEqualTo("list of varieties imported, 2 new, 1 changed");
        });
        desk.tell(new Message.Kept("List imported.", false, desk.state().shown()));
        assertThat(desk.state().layers().over()).isEmpty();
    }

    @Test
    void whileARowIsWrongEnterOnlySaysSo() {
        Desk desk = wrong().press("Enter");

        assertThat(desk.effects()).isEmpty();
        assertThat(desk.line(22)).contains("Import is off just now: 1 row is wrong");
    }

    @Test
    void whereNothingIsNewEnterSaysSo() {
        Desk desk =
                asked().tell(read("Inkwell;;;;;;;", "Inkwell;hyacinth;;;;;;")).press("Enter");

        assertThat(desk.effects()).isEmpty();
        assertThat(desk.line(22)).contains("all of it is in the book already");
    }

    @Test
    void escGoesBackToTheFileAndLeavesIt() {
        Desk desk = asked().tell(read(RIGHT)).press("Esc");

        assertThat(desk.lines()).anyMatch(line -> line.contains("~/autumn.csv"));
        assertThat(desk.press("Esc").state().layers().over()).isEmpty();
    }

    @Test
    void aTableThatIsNoListIsSaidOverTheFile() {
        Desk desk = asked().tell(new Message.TableRead(
                "autumn.csv", new Table(List.of("height"), table("45").rows())));

        assertThat(desk.line(22)).contains("autumn.csv: The first row names no column name.");
        assertThat(desk.lines()).anyMatch(line -> line.contains("~/autumn.csv"));
    }

    @Test
    void aTableThatComesTooLateIsNothing() {
        Desk desk = asked().press("Esc").tell(read(RIGHT));

        assertThat(desk.state().layers().over()).isEmpty();
    }

    @Test
    void purchasesAreKnownByTheirColumns() {
        Table bought = new Table(
                List.of("variety", "count", "date"), List.of(new Table.Row(2, List.of("Inkwell", "6", "2027-01-02"))));

        assertThat(asked().tell(new Message.TableRead("parcels.csv", bought)).line(4))
                .contains("List of purchases in parcels.csv");
    }

    @Test
    void whatChangedElsewhereChangesWhatTheRowsComeTo() {
        Desk desk = asked().tell(read(RIGHT));
        Variety elsewhere = Variety.of(new Id<>(77, 77), "Thimble Post", new Kind("tulip", "Triumph"));
        Journal now = desk.state().journal().with(List.of(new Edit.Put(elsewhere)));
        desk.tell(new Message.Changed(new Snapshot(now, Desk.TODAY, 413, 0)));

        assertThat(desk.lines()).anyMatch(line -> line.matches(".*2 +changed +'Thimble Post'.*"));
    }

    @Test
    void aJournalThatIsReadOnlyTakesNoList() {
        Journal journal = GrowersWinter.told().journal();
        Desk writable = Desk.over(journal);
        Copy copy = new Copy("winter.sillbook", false, true);
        Desk desk = Desk.over(journal)
                .tell(new Message.Opened(copy, writable.state().shown()))
                .press("4", "i");

        assertThat(desk.line(22)).contains("Import is off just now: the journal is read only.");
    }
}
