// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Choice;
import sillbook.model.Journal;
import sillbook.season.past.Candidate;
import sillbook.text.Initial;

/** A variety among those there are to choose from, as its line and the foot of a page say it. */
public record CandidateWords(Candidate candidate, Journal journal) {
    private static final String NO_DATA = "no data";

    /** {@code 4.2}; where it was never scored, that there is nothing. */
    public String score() {
        return candidate.mean().isPresent() ? Decimal.sayFixed(candidate.mean().getAsDouble(), 1) : NO_DATA;
    }

    /** {@code ▪8}: pots that were scored. */
    public String pots() {
        return candidate.scores().isEmpty() ? "-" : "▪" + candidate.scores().size();
    }

    /** What says most of it: why it was set aside, else the weightiest reason; empty where nothing speaks either way. */
    public Optional<String> because() {
        return whySetAside().or(() -> reasons().stream().findFirst());
    }

    private Optional<String> whySetAside() {
        return candidate.holding().flatMap(Choice::whySetAside);
    }

    private List<String> reasons() {
        ReasonWords words = new ReasonWords(journal);
        return candidate.reasons().stream().map(words::say).toList();
    }

    /** The reasons its line has no room for, what is there, what it cost, and an earlier season's mark. */
    public String aside() {
        List<String> said = new ArrayList<>();
        phrase(reasons().stream().skip(whySetAside().isPresent() ? 0 : 1).toList())
                .ifPresent(said::add);
        phrase(bulbs()).ifPresent(said::add);
        return said.isEmpty() ? "No purchase, no price and no other reason is in the book." : String.join(" ", said);
    }

    private List<String> bulbs() {
        List<String> facts = new ArrayList<>();
        if (candidate.inHand() > 0) {
            facts.add(candidate.inHand() + " in hand");
        }
        if (candidate.onOrder() > 0) {
            facts.add(candidate.onOrder() + " to order or ordered");
        }
        candidate.each().ifPresent(each -> facts.add("last paid " + Prices.say(each) + " each"));
        candidate
                .before()
                .filter(choice -> candidate.choice().isEmpty())
                .map(new ChoosingWords(journal)::marked)
                .ifPresent(facts::add);
        return facts;
    }

    private static Optional<String> phrase(List<String> facts) {
        return facts.isEmpty() ? Optional.empty() : Optional.of(Initial.large(String.join("; ", facts)) + ".");
    }
}
