// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Frame;
import sillbook.ui.draw.KeyLine;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Rule;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Slip;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Layer.Reach;
import sillbook.ui.screen.Look.Cover;

/** One picture: the title rows, the body with what lies over it, and the foot of the topmost layer. */
record View(State state, Size size) {
    private static final int HEAD_ROWS = 3;
    private static final int FOOT_ROWS = 4;

    Frame frame() {
        Cells cells = Cells.blank(size, state.window().alphabet());
        if (!size.holds(Window.SMALLEST)) {
            new TooSmall(state.top() instanceof Quitting ? "Enter leave   Esc stay" : "Q leave")
                    .render(cells.area(), cells);
            return new Frame(cells, Optional.empty());
        }
        List<Look> looks = state.layers().stack().stream()
                .map(layer -> layer.look(state, body().size()))
                .toList();
        Look top = looks.get(looks.size() - 1);
        drawBody(looks, cells);
        drawFoot(top, cells);
        return new Frame(cells, cursor(looks));
    }

    static Rect body(Size size) {
        return size.area().withoutTop(HEAD_ROWS).withoutBottom(FOOT_ROWS);
    }

    private Rect body() {
        return body(size);
    }

    private void drawBody(List<Look> looks, Cells cells) {
        int lowest = lowestSeen(looks);
        if (looks.get(lowest).cover() == Cover.EVERYTHING) {
            looks.get(lowest).content().render(size.area().withoutBottom(FOOT_ROWS), cells);
        } else {
            new Masthead(state).render(size.area().lines(0, HEAD_ROWS), cells);
            looks.get(lowest).content().render(body(), cells);
        }
        looks.subList(lowest + 1, looks.size()).stream()
                .filter(look -> look.cover() == Cover.SLIP)
                .forEach(look -> new Slip(look.title(), look.rows() + 1, look.content()).render(body(), cells));
    }

    /** The layer that hides all below it. */
    private static int lowestSeen(List<Look> looks) {
        int lowest = 0;
        for (int i = 0; i < looks.size(); i++) {
            Cover cover = looks.get(i).cover();
            lowest = cover == Cover.BODY || cover == Cover.EVERYTHING ? i : lowest;
        }
        return lowest;
    }

    private void drawFoot(Look top, Cells cells) {
        Rect foot = size.area().lines(size.rows() - FOOT_ROWS, FOOT_ROWS);
        Rule.PLAIN.render(foot.line(0), cells);
        top.ticks().render(foot.line(0), cells);
        Rule.PLAIN.withRight(place(top)).renderTexts(foot.line(0), cells);
        Rect aside = foot.lines(1, 2);
        Optional<Said> problem = state.said().filter(Said::isProblem);
        if (problem.isPresent()) {
            drawProblem(problem.get(), aside, cells);
        } else {
            top.aside().render(aside, cells);
            state.said().ifPresent(said -> drawDone(said, aside, cells));
        }
        keys(top).render(foot.line(3), cells);
    }

    /** Which part is in sight, and before that what goes on for pages that are not. */
    private String place(Look top) {
        Stream<String> elsewhere = state.layers().pages().entrySet().stream()
                .filter(page -> page.getKey() != state.layers().open())
                .flatMap(page -> page.getValue().goesOn().stream());
        return Stream.concat(elsewhere, Stream.of(top.place()))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static void drawProblem(Said said, Rect aside, Cells cells) {
        cells.put(aside.column() + 1, aside.row(), Sign.LATE, Style.RUST);
        Aside.of(said.sentence()).render(aside.withoutLeft(2), cells);
    }

    private static void drawDone(Said said, Rect aside, Cells cells) {
        Rect line = aside.line(1);
        cells.clear(line);
        if (!said.above().isEmpty()) {
            cells.clear(aside.line(0));
            Aside.of(said.above()).render(aside.line(0), cells);
        }
        Aside.of(said.sentence()).render(line, cells);
    }

    /** The keys that are on; the key to all the others always stands last. */
    private KeyLine keys(Look top) {
        boolean lettersAreText = state.top().reach() == Reach.FIELD;
        List<Offer> offers = state.offers();
        boolean leadsOn = top.foot().contains(Action.KEYS);
        Stream<Action> last = leadsOn ? Stream.of() : Stream.of(Action.KEYS);
        List<KeyLine.Hint> hints = Stream.concat(top.foot().stream(), last)
                .flatMap(action -> Offer.find(offers, action).stream())
                .filter(Offer::isOn)
                .map(offer -> offer.hint(lettersAreText))
                .toList();
        return new KeyLine(hints);
    }

    private Optional<Point> cursor(List<Look> looks) {
        Look top = looks.get(looks.size() - 1);
        Rect content = switch (top.cover()) {
            case EVERYTHING -> size.area();
            case BODY, FOOT -> body();
            case SLIP -> Slip.inside(body(), top.rows() + 1);
        };
        return top.cursor().map(at -> new Point(content.column() + at.column(), content.row() + at.row()));
    }
}
