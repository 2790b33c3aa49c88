// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.season.Outlook;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Almanac;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Kit;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.Answers;
import sillbook.ui.screen.form.Blank;
import sillbook.ui.screen.form.Note;
import sillbook.ui.screen.form.Reading;
import sillbook.ui.screen.form.Remark;
import sillbook.ui.screen.form.Sequel;
import sillbook.ui.screen.form.Sheet;
import sillbook.ui.screen.form.Suggestion;
import sillbook.words.Complaint;
import sillbook.words.line.Bench;
import sillbook.words.line.LineReading;
import sillbook.words.line.Meaning;
import sillbook.words.line.PiecedLine;
import sillbook.words.line.Stretch;

/**
 * A form whose answers are read as one line.
 *
 * @param title over the blanks
 * @param records what Enter does, in the foot
 * @param draft under which name it waits when it is left half done
 * @param begin the words the line begins with
 * @param parts in the order of the line
 * @param blanks in the order they are asked
 * @param prefilled the answers it opens with
 * @param meanwhile what the journal is taken to say while the answers are read: an entry being corrected is taken as
 *     bare, so that a blank left empty means that nothing is known
 * @param care what to beware of, where hands go into potting mix for it
 * @param sequel what opens once it is recorded
 */
record LineSheet(
        String title,
        String records,
        String draft,
        String begin,
        List<Part> parts,
        List<Blank> blanks,
        Answers prefilled,
        List<Edit> meanwhile,
        Optional<PottingCare> care,
        Sequel sequel)
        implements Sheet {

    LineSheet {
        parts = List.copyOf(parts);
        blanks = List.copyOf(blanks);
        meanwhile = List.copyOf(meanwhile);
    }

    /** A new entry, its blanks asked in the order of the line. */
    static LineSheet of(String title, String draft, String begin, List<Part> parts) {
        List<Blank> blanks = parts.stream().map(Part::blank).toList();
        return new LineSheet(
                title, "record", draft, begin, parts, blanks, Answers.NONE, List.of(), Optional.empty(), Sequel.NONE);
    }

    /** The same, opening with these answers. */
    LineSheet filled(Answers answers) {
        return new LineSheet(title, records, draft, begin, parts, blanks, answers, meanwhile, care, sequel);
    }

    /** The same, its blanks asked in another order. */
    LineSheet asking(List<Blank> order) {
        return new LineSheet(title, records, draft, begin, parts, order, prefilled, meanwhile, care, sequel);
    }

    /** The same, over an entry that is there already. */
    LineSheet over(Edit... bare) {
        return new LineSheet(title, "correct", draft, begin, parts, blanks, prefilled, List.of(bare), care, sequel);
    }

    /** The same, over what it says, recorded as something new. */
    LineSheet recording() {
        return new LineSheet(title, "record", draft, begin, parts, blanks, prefilled, meanwhile, care, sequel);
    }

    /** The same, with something that opens once it is recorded. */
    LineSheet followedBy(Sequel other) {
        return new LineSheet(title, records, draft, begin, parts, blanks, prefilled, meanwhile, care, other);
    }

    /** The same, with what to do before potting at its foot. */
    LineSheet beforePotting(PottingCare caring) {
        return new LineSheet(
                title, records, draft, begin, parts, blanks, prefilled, meanwhile, Optional.of(caring), sequel);
    }

    @Override
    public String title(State state) {
        return title;
    }

    @Override
    public boolean isSlip() {
        return blanks.size() <= 4;
    }

    @Override
    public String recordWords() {
        return records;
    }

    @Override
    public Optional<String> draftName() {
        return Optional.of(draft);
    }

    @Override
    public Aside aside(State state, Answers answers, Blank blank) {
        String meanwhile = care.flatMap(caring -> caring.says(state, answers, blank, bench(state)))
                .orElse("Nothing is kept until you record; a half-filled form waits if you look away.");
        return Aside.of("", part(blank).hint(), meanwhile);
    }

    @Override
    public Reading read(State state, Answers answers) {
        PiecedLine line = line(answers);
        LineReading read = line.read(bench(state));
        Reading reading = noted(read);
        for (Part part : parts) {
            reading = reading.with(part.blank(), Remark.understood(""));
        }
        Optional<Complaint> complaint = read.complaint();
        if (complaint.isPresent()) {
            return reading.with(blamed(line, read, answers), wrong(complaint.get()));
        }
        return read.change()
                .map(reading::meaning)
                .orElse(reading.with(
                        blamed(line, read, answers),
                        Remark.wrong(
                                "",
                                "Something is still wanted here. "
                                        + part(blamed(line, read, answers)).hint())));
    }

    /** Of pots that are made, how their bulbs will sit. */
    @Override
    public Optional<Widget> picture(State state, Reading reading) {
        return isSlip()
                ? Optional.empty()
                : reading.change().flatMap(change -> PotMade.picture(state.journal(), change));
    }

    private static Remark wrong(Complaint complaint) {
        return Remark.wrong(complaint.brief(), complaint.sentence());
    }

    /** What is understood and what follows, under the blanks. */
    private static Reading noted(LineReading read) {
        List<Note> notes = new ArrayList<>();
        for (Meaning meaning : read.means()) {
            String warning = meaning.warning().isEmpty() ? "" : "   ! " + meaning.warning();
            notes.add(new Note(notes.isEmpty() ? "Means" : "", meaning.says() + warning));
        }
        for (String then : read.then()) {
            boolean isFirst = notes.stream().noneMatch(note -> note.label().equals("Then"));
            notes.add(new Note(isFirst ? "Then" : "", then));
        }
        read.remarks().forEach(remark -> notes.add(new Note("", remark.says())));
        return notes.stream().reduce(Reading.NOTHING, Reading::with, (one, other) -> other);
    }

    /** The blank at fault: the one that holds what was not understood, else the first that is wanted, else the first. */
    private Blank blamed(PiecedLine line, LineReading read, Answers answers) {
        OptionalInt unknown = read.unknown().stream()
                .map((Stretch stretch) -> line.piece(stretch))
                .filter(OptionalInt::isPresent)
                .mapToInt(OptionalInt::getAsInt)
                .findFirst();
        if (unknown.isPresent()) {
            return parts.get(unknown.getAsInt()).blank();
        }
        return blanks.stream()
                .filter(blank -> part(blank).isWanted() && answers.isBlank(blank))
                .findFirst()
                .orElse(blanks.get(0));
    }

    @Override
    public List<Suggestion> suggestions(State state, Answers answers, Blank blank) {
        if (answers.isBlank(blank)) {
            return List.of();
        }
        return line(answers).offers(parts.indexOf(part(blank)), bench(state)).stream()
                .filter(offered -> part(blank).makesNew() || !offered.isNew())
                .map(offered -> new Suggestion(offered.answer(), offered.shown(), offered.aside(), Optional.empty()))
                .toList();
    }

    private PiecedLine line(Answers answers) {
        return PiecedLine.of(
                begin,
                parts.stream()
                        .map(part -> part.answered(answers.text(part.blank())))
                        .toList());
    }

    private Part part(Blank blank) {
        return parts.stream()
                .filter(part -> part.blank().equals(blank))
                .findFirst()
                .orElseThrow();
    }

    private Bench bench(State state) {
        Kit kit = state.kit();
        if (meanwhile.isEmpty()) {
            Almanac known = state.almanac();
            return new Bench(state.journal(), known.outlook(), kit.handbook(), kit.ids(), known.plannings());
        }
        Journal taken = state.journal().with(meanwhile);
        Outlook outlook = Outlook.of(taken, kit.handbook(), state.shown().today());
        return new Bench(taken, outlook, kit.handbook(), kit.ids());
    }
}
