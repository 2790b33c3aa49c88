// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.change.Remove;
import sillbook.change.WriteDown;
import sillbook.handbook.FigureName;
import sillbook.model.Id;
import sillbook.model.OwnFigure;
import sillbook.model.OwnFigure.Range;
import sillbook.model.OwnFigure.Scope;
import sillbook.model.Variety;
import sillbook.words.FigureValues;
import sillbook.words.Heard;
import sillbook.words.Terms;

/**
 * {@code figure tulip triumph cold weeks 12 15 17}: a figure of the grower's own, set over the handbook's or taken back; or
 * the handbook's asked for, whatever was learnt.
 */
final class FigureForm implements Form {
    private static final Slot<FigureName> FIGURE = Slot.one("figure", Senses.oneOf(Terms.FIGURES));
    private static final Slot<Boolean> HARDY = Slot.one("", Senses.flag("all hardy|all hardy kinds|hardy|house rule"));
    private static final Slot<String> VALUE = Slot.many(
            "value",
            Senses.matching(
                    "([+-]?[\\d.,/]*\\d[\\d.,/]*(?: and a half)? ?(?:wks?|weeks?|w|days?|d|cm|mm|m|in|inch|inches|\"|c|f|bulbs?)?)",
                    said -> Heard.as(said.text(1).replaceAll(" ?bulbs?$", ""))));
    private static final Slot<Boolean> NONE = Slot.one("", Senses.flag("none|no|off|taken back"));
    private static final Slot<Boolean> HANDBOOK = Slot.one(
            "", Senses.flag("handbook|the handbook|handbook's|the handbook's|as the handbook|as in the handbook"));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "own figure",
                "A kind, a variety or all hardy; the figure (weeks of cold, weeks to bloom, days in bloom and the others of the "
                        + "handbook); one value, or the least, the usual and the most. Handbook asks for the handbook's, whatever your pots taught; "
                        + "none takes either back.",
                "figure tulip triumph cold weeks 12 15 17",
                "figure Marrow Lane days in bloom 10",
                "figure tulip weeks to bloom handbook",
                "figure Marrow Lane days in bloom none");
    }

    @Override
    public List<String> keywords() {
        return List.of("figure");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.VARIETY, Slots.KIND, HARDY, FIGURE, VALUE, HANDBOOK, NONE, Slots.NOTE);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(FIGURE) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        Optional<Scope> scope = scope(filled);
        Optional<FigureName> figure = filled.get(FIGURE);
        if (scope.isEmpty()) {
            draft.ask("whose figure?", "Whose figure is it? Write a kind, as tulip, a variety, or all hardy.");
        }
        if (figure.isEmpty()) {
            draft.ask(
                    "which figure?", "Which figure? Write it too, as weeks of cold, weeks to bloom or days in bloom.");
        }
        scope.ifPresent(holder -> figure.ifPresent(name -> set(holder, name, filled, draft)));
    }

    private static Optional<Scope> scope(Filled filled) {
        return filled.get(Slots.VARIETY)
                .map(Variety::id)
                .map(Scope::of)
                .or(() -> filled.get(Slots.KIND).map(Scope::of))
                .or(() -> filled.get(HARDY).map(all -> Scope.ofAllHardy()));
    }

    private static void set(Scope scope, FigureName name, Filled filled, Draft draft) {
        String whose = filled.get(Slots.VARIETY)
                .map(variety -> Lines.quoted(variety.name()))
                .or(() -> scope.kind().map(Object::toString))
                .orElse("all hardy kinds");
        draft.means(Terms.FIGURES.say(name) + " of " + whose);
        Optional<OwnFigure> before = draft.bench().journal().ownFigures().all().stream()
                .filter(own -> own.scope().equals(scope) && own.figure().equals(name.key()))
                .findFirst();
        if (filled.has(NONE)) {
            takeBack(before, draft);
        } else if (filled.has(HANDBOOK)) {
            write(scope, name, Optional.empty(), before, filled, draft);
        } else {
            FigureValues.parse(name, filled.all(VALUE))
                    .fold(range -> write(scope, name, Optional.of(range), before, filled, draft), why -> {
                        draft.ask(why);
                        return false;
                    });
        }
    }

    private static void takeBack(Optional<OwnFigure> before, Draft draft) {
        draft.means("taken back: what your pots taught holds again, else the handbook's");
        before.ifPresentOrElse(
                own -> draft.change(new Remove(own)),
                () -> draft.ask("none there", "There is no figure of your own to take back. Nothing changes."));
    }

    private static boolean write(
            Scope scope,
            FigureName name,
            Optional<Range> range,
            Optional<OwnFigure> before,
            Filled filled,
            Draft draft) {
        draft.means("from now on " + said(name, range, draft));
        before.ifPresent(own -> draft.means("until now " + said(name, own.range(), draft)));
        Id<OwnFigure> id =
                before.map(OwnFigure::id).orElseGet(() -> draft.bench().ids().next());
        draft.change(new WriteDown(new OwnFigure(
                id, scope, name.key(), range, filled.get(Slots.NOTE).orElse(""))));
        return true;
    }

    private static String said(FigureName name, Optional<Range> range, Draft draft) {
        return range.map(given ->
                        FigureValues.say(name, given, draft.bench().journal().settings()))
                .orElse("the handbook's");
    }
}
