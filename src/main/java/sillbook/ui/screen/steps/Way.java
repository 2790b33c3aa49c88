// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.steps;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.TakenStep;

/** Which way along the journal's steps. */
public enum Way {
    BACK("Take back", "take back", "takes back", Action.PUT_BACK) {
        @Override
        int count(Snapshot shown) {
            return shown.toTakeBack();
        }

        @Override
        Effect list(Snapshot shown) {
            return new Effect.ListSteps(shown.toPutBack(), Math.min(MOST_LISTED, shown.toTakeBack()));
        }

        @Override
        Effect go(int steps) {
            return new Effect.TakeBack(steps);
        }

        @Override
        List<TakenStep> nextFirst(List<TakenStep> newestFirst) {
            return newestFirst;
        }
    },
    FORWARD("Put back", "put back", "puts back", Action.TAKE_BACK) {
        @Override
        int count(Snapshot shown) {
            return shown.toPutBack();
        }

        @Override
        Effect list(Snapshot shown) {
            int some = Math.min(MOST_LISTED, shown.toPutBack());
            return new Effect.ListSteps(shown.toPutBack() - some, some);
        }

        @Override
        Effect go(int steps) {
            return new Effect.PutBack(steps);
        }

        @Override
        List<TakenStep> nextFirst(List<TakenStep> newestFirst) {
            List<TakenStep> oldestFirst = new ArrayList<>(newestFirst);
            Collections.reverse(oldestFirst);
            return oldestFirst;
        }
    };

    private static final int MOST_LISTED = 200;

    private final String title;
    private final String does;
    private final String doesIt;
    private final Action turn;

    Way(String title, String does, String doesIt, Action turn) {
        this.title = title;
        this.does = does;
        this.doesIt = doesIt;
        this.turn = turn;
    }

    /** How many steps there are that way. */
    abstract int count(Snapshot shown);

    /** Asks for their names. */
    abstract Effect list(Snapshot shown);

    abstract Effect go(int steps);

    /** The listed steps in the order they are gone through. */
    abstract List<TakenStep> nextFirst(List<TakenStep> newestFirst);

    String title() {
        return title;
    }

    String does() {
        return does;
    }

    String doesIt() {
        return doesIt;
    }

    /** The action that goes the other way. */
    Action turn() {
        return turn;
    }

    Way other() {
        return this == BACK ? FORWARD : BACK;
    }
}
