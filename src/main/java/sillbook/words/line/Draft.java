// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.change.Change;
import sillbook.change.Decision;
import sillbook.words.Complaint;
import sillbook.words.Heard;
import sillbook.words.Warned;

/** A reading while its form puts it together. */
final class Draft {
    private final Bench bench;
    private final List<Meaning> means = new ArrayList<>();
    private final List<String> then = new ArrayList<>();
    private final List<Warned> remarks = new ArrayList<>();
    private Optional<Change> change = Optional.empty();
    private Optional<Complaint> wanting = Optional.empty();

    Draft(Bench bench) {
        this.bench = bench;
    }

    Bench bench() {
        return bench;
    }

    void means(String says) {
        means.add(Meaning.of(says));
    }

    void means(String says, String warning) {
        means.add(new Meaning(says, warning));
    }

    void remark(String code, String sentence) {
        remarks.add(new Warned(code, sentence));
    }

    /** Something is still missing, or does not go together; the first thing asked stands. */
    void ask(String brief, String sentence) {
        wanting = wanting.or(() -> Optional.of(new Complaint(brief, sentence)));
    }

    void ask(Complaint complaint) {
        ask(complaint.brief(), complaint.sentence());
    }

    void change(Change made) {
        change = Optional.of(made);
    }

    /**
     * The reading, once the form has said all it has to say. What follows from the line is said even while some words are in
     * doubt, but not while they are wrong.
     *
     * @param wrong what is wrong with the words themselves, which comes before anything that is missing
     * @param doubt which words may be meant otherwise
     */
    LineReading reading(
            Optional<Complaint> wrong, Optional<Complaint> doubt, List<Stretch> unknown, List<Completion> completions) {
        Optional<Complaint> open = wrong.or(() -> wanting);
        Optional<Decision> decision =
                change.filter(made -> open.isEmpty()).map(made -> made.on(bench.journal(), bench.hand()));
        decision.flatMap(decided ->
                        decided.fold(step -> Following.of(step, bench), refusal -> Optional.<Following>empty()))
                .ifPresent(this::follow);
        Optional<Complaint> complaint = open.or(() -> doubt).or(() -> decision.flatMap(Draft::refusal));
        Optional<Change> kept = complaint.isPresent() ? Optional.empty() : change;
        return new LineReading(kept, means, then, remarks, complaint, unknown, completions);
    }

    /** The change alone, or why there is none; nothing of what would follow is worked out, and whether it can be is not asked. */
    Heard<Change> heard(Optional<Complaint> wrong, Optional<Complaint> doubt) {
        return wrong.or(() -> wanting)
                .or(() -> doubt)
                .<Heard<Change>>map(Heard.Not::new)
                .or(() -> change.map(made -> Heard.as(made)))
                .orElseGet(() -> Heard.not("nothing", "It says nothing."));
    }

    private void follow(Following following) {
        then.addAll(following.says());
        remarks.addAll(following.concerns());
    }

    private static Optional<Complaint> refusal(Decision decision) {
        return decision.fold(
                step -> Optional.empty(), refused -> Optional.of(new Complaint("cannot be", refused.sentence())));
    }
}
