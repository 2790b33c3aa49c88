// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.handbook.Handbook;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.season.Ahead;
import sillbook.season.BatchShare;
import sillbook.season.ColdCount;
import sillbook.season.Outlook;
import sillbook.season.PotLine;
import sillbook.season.PotNow;
import sillbook.season.RoomWarmth;
import sillbook.words.BatchWords;
import sillbook.words.CautionWords;
import sillbook.words.ColdSaid;
import sillbook.words.Days;
import sillbook.words.Diary;
import sillbook.words.DiaryEntry;
import sillbook.words.JobWords;
import sillbook.words.KeepingWords;
import sillbook.words.LearntWords;
import sillbook.words.PotNames;
import sillbook.words.PotWords;
import sillbook.words.SourceWords;
import sillbook.words.StageWords;
import sillbook.words.SuspectWords;
import sillbook.words.Terms;
import sillbook.words.VerdictWords;
import sillbook.words.WarmthWords;
import sillbook.words.YearWords;

/** Pots as plain lines. */
record PotText(Journal journal, LocalDate today) {

    /** {@code T4 'Marrow Lane' x5: cold, cellar; Tue 12 Jan: bring into cool room}. */
    String line(PotNow now) {
        Pot pot = now.life().pot();
        PotNames names = new PotNames(journal);
        String next = now.next()
                .map(job -> "; " + Days.day(job.on()) + ": " + new JobWords(journal, today).what(job))
                .orElse("");
        String winter = YearWords.which(now.life());
        return pot.label() + " " + names.nameAndCount(List.of(pot.id())) + (winter.isEmpty() ? "" : ", " + winter)
                + ": " + Terms.STAGES.say(now.life().stage()) + where(now) + next;
    }

    /** A batch as one: {@code T1-T6 'Marrow Lane' x5: 4 in cold, 2 in cool; Tue 12 Jan: may come in}. */
    String line(PotLine row, Outlook outlook) {
        PotNow first = outlook.pot(row.pots().get(0));
        if (row.pots().size() == 1) {
            return line(first);
        }
        PotNames names = new PotNames(journal);
        Optional<BatchShare> parted = row.batch().filter(BatchShare::isParted);
        String stands = parted.map(share -> JobWords.counts(share, "in "))
                .orElseGet(() -> Terms.STAGES.say(first.life().stage()) + where(first));
        return names.labels(row.pots()) + " " + names.nameAndCount(row.pots()) + ": " + stands + next(row, names);
    }

    private String where(PotNow now) {
        return now.life()
                .stands()
                .map(stay -> ", " + new PotNames(journal).place(stay.place()))
                .orElse("");
    }

    /** What comes next, and with which pots where it is not all of them. */
    private String next(PotLine row, PotNames names) {
        return row.next()
                .map(job -> "; " + Days.day(job.on()) + ": "
                        + (job.pots().size() == row.pots().size() ? "" : names.labels(job.pots()) + " ")
                        + new JobWords(journal, today).plain(job))
                .orElse("");
    }

    /**
     * How it stands, what is ahead, all that has been, the newest first, and what to beware of.
     *
     * @param outlook of the day, for what stands with it
     */
    List<String> card(PotNow now, Outlook outlook) {
        List<String> lines = new ArrayList<>(List.of(line(now)));
        lines.add(PotWords.made(journal, now.life().pot()));
        List<Id<Pot>> inDisplay =
                now.life().display().map(in -> outlook.inDisplay(in.value())).orElse(List.of());
        Optional.of(PotWords.dressed(now.life(), inDisplay, new PotNames(journal)))
                .filter(dressed -> !dressed.isEmpty())
                .ifPresent(dressed -> lines.add("now: " + dressed));
        new BatchWords(journal)
                .parts(outlook.batchOf(now.life().pot().id()))
                .forEach(part -> lines.add("batch: " + part));
        new YearWords(journal).past(now.life()).forEach(year -> lines.add("before: " + year));
        PotWords.cold(now).ifPresent(cold -> {
            lines.add("cold: " + cold);
            Optional.of(now.life().cold().count())
                    .filter(ColdCount::isRead)
                    .ifPresent(read -> lines.add("by thermometer: " + ColdSaid.say(read)));
        });
        new WarmthWords(journal)
                .say(RoomWarmth.of(journal, now, outlook.day()))
                .forEach(remark -> lines.add("warmth: " + remark));
        now.readiness()
                .ifPresent(ready -> lines.add("coming in: "
                        + VerdictWords.clause(
                                ready, now.life(), journal.settings().lengths())));
        now.useBy().ifPresent(day -> lines.add("use by " + Days.full(day)));
        now.ahead().stream().map(PotText::ahead).forEach(lines::add);
        lines.addAll(LearntWords.ahead(now.signs()));
        if (now.life().isFailed()) {
            SuspectWords words = new SuspectWords(journal);
            outlook.suspects(
                            now.life().pot().id(),
                            journal.failureOf(now.life().pot().id()))
                    .forEach(suspect -> lines.add("cause: " + words.line(suspect)));
        }
        entries(now.life().pot()).map(PotText::entry).forEach(lines::add);
        new KeepingWords(Handbook.standard(), journal.settings().lengths(), outlook.day())
                .say(now)
                .forEach(kept -> lines.add("keep: " + kept));
        lines.addAll(CareLines.of(cautions(now.life().pot())));
        return lines;
    }

    private static String ahead(Ahead ahead) {
        String whose =
                ahead.figure().map(figure -> ", " + SourceWords.brief(figure)).orElse("");
        return StageWords.into(ahead.stage()) + ": about "
                + Days.full(ahead.window().likely()) + " ("
                + Days.fromTo(ahead.window().earliest(), ahead.window().latest()) + ")" + whose;
    }

    private Stream<DiaryEntry> entries(Pot pot) {
        return Diary.of(journal).entries().stream().filter(entry -> entry.pots().contains(pot.id()));
    }

    private static String entry(DiaryEntry entry) {
        return Days.full(entry.day()) + ": " + entry.says();
    }

    private List<String> cautions(Pot pot) {
        return new CautionWords(Handbook.standard(), journal.settings()).of(journal, pot);
    }
}
