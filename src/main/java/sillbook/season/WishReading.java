// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Wish;
import sillbook.reckon.dates.Facts;
import sillbook.reckon.dates.Judgement;
import sillbook.reckon.dates.Judgement.Reason;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Schedule;
import sillbook.reckon.dates.Window;

/** What a wish asks of one pot. Of several days wished for, it aims at the first and is met by the last. */
record WishReading(Wish wish, Prospect.Share share) {
    private static final Set<Milestone> STEPS = EnumSet.of(Milestone.COLD, Milestone.COOL_ROOM, Milestone.WARM_ROOM);

    /** When the stage should begin for it. */
    Optional<Window> window(Milestone milestone) {
        return share.neededFor(wish.from(), milestone);
    }

    /** The day on which the stage should begin for it; empty where nothing can be done to begin it. */
    Optional<LocalDate> on(Milestone milestone) {
        return STEPS.contains(milestone) ? window(milestone).map(Window::likely) : Optional.empty();
    }

    private Optional<LocalDate> by(Milestone milestone) {
        return STEPS.contains(milestone) ? share.neededFor(wish.to(), milestone).map(Window::likely) : Optional.empty();
    }

    WishNow stand(Prospect prospect, Map<Milestone, Window> windows) {
        Optional<Milestone> next = prospect.next();
        return new WishNow(wish, share, next.flatMap(this::on), next.flatMap(this::by), judgement(prospect, windows));
    }

    private Optional<Judgement> judgement(Prospect prospect, Map<Milestone, Window> windows) {
        Optional<Judgement> likely = prospect.next()
                .filter(STEPS::contains)
                .flatMap(next -> Optional.ofNullable(windows.get(next))
                        .flatMap(window -> judge(prospect.beginning(next, window.likely()))));
        boolean isOverBefore = likely.flatMap(Judgement::reason)
                .filter(Reason.FLOWERS_BEFORE::equals)
                .isPresent();
        return isOverBefore || likely.isEmpty() ? judge(prospect.facts()).or(() -> likely) : likely;
    }

    private Optional<Judgement> judge(Facts facts) {
        return share.schedule(facts.withWish(wish.to())).flatMap(Schedule::judgement);
    }
}
