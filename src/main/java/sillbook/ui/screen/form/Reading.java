// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.change.Change;

/**
 * What a form as it is filled in means.
 *
 * @param remarks what stands beside each blank, as far as there is anything
 * @param notes what follows, under the blanks
 * @param change what recording it does; empty while a blank wants something
 */
public record Reading(Map<Blank, Remark> remarks, List<Note> notes, Optional<Change> change) {
    public static final Reading NOTHING = new Reading(Map.of(), List.of(), Optional.empty());

    public Reading {
        remarks = Collections.unmodifiableMap(new LinkedHashMap<>(remarks));
        notes = List.copyOf(notes);
    }

    public Reading with(Blank blank, Remark remark) {
        Map<Blank, Remark> more = new LinkedHashMap<>(remarks);
        more.put(blank, remark);
        return new Reading(more, notes, change);
    }

    public Reading with(Note note) {
        List<Note> more = new ArrayList<>(notes);
        more.add(note);
        return new Reading(remarks, more, change);
    }

    public Reading meaning(Change what) {
        return new Reading(remarks, notes, Optional.of(what));
    }

    /** Beside a blank, if anything is said of it. */
    public Optional<Remark> remark(Blank blank) {
        return Optional.ofNullable(remarks.get(blank));
    }

    /** The first blank something is wrong with. */
    public Optional<Map.Entry<Blank, Remark>> firstProblem() {
        return remarks.entrySet().stream()
                .filter(entry -> entry.getValue().isProblem())
                .findFirst();
    }
}
