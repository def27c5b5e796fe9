package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Span;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.function.Function;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.pump.PumpBook;
import org.hearthway.pump.PumpBook.Line;
import org.hearthway.pump.PumpBook.NewEntry;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Change;
import org.hearthway.pump.PumpEntry.Implant;
import org.hearthway.pump.PumpEntry.Refill;
import org.hearthway.pump.PumpKinds;
import org.hearthway.pump.PumpOutlook;
import org.hearthway.pump.PumpSums;

/** Opens the forms of a child's pump, one at a time, and takes what was typed to the book. */
final class PumpForms implements PumpActs, EntryForm.Acts {

    /** The page on which the forms open. */
    interface Page {
        /** Shows a form in place of the one before. */
        void open(Component form);

        /** Takes the form away. */
        void close();

        /** Draws anew what is told beside the form. */
        void changed();

        /** What a person is called. */
        String name(AccountId person);
    }

    private static final String FIGURES = "figures";

    private final PumpBook book;
    private final PumpKinds kinds;
    private final FormSay say;
    private final Viewer.Person viewer;
    private final ChildId child;
    private final Clock clock;
    private final Page page;
    private long seen;

    PumpForms(
            PumpBook book, PumpKinds kinds, FormSay say, Viewer.Person viewer, ChildId child, Clock clock, Page page) {
        this.book = book;
        this.kinds = kinds;
        this.say = say;
        this.viewer = viewer;
        this.child = child;
        this.clock = clock;
        this.page = page;
    }

    @Override
    public void refill() {
        refill(false, now(), Optional.empty(), body -> body);
    }

    @Override
    public void elsewhere() {
        refill(true, now(), Optional.empty(), body -> body);
    }

    private void refill(
            boolean elsewhere, LocalDateTime at, Optional<Long> corrects, Function<RefillBody, RefillBody> filling) {
        var pump = book.outlook(viewer, child);
        open(
                elsewhere ? "elsewhere" : "refill",
                at,
                corrects,
                fields -> filling.apply(new RefillBody(fields, pump, elsewhere, page.name(viewer.account()))),
                corrects.isPresent() ? Optional.empty() : Optional.of(pump));
    }

    @Override
    public void change() {
        change(now(), Optional.empty(), body -> body);
    }

    private void change(LocalDateTime at, Optional<Long> corrects, Function<ChangeBody, ChangeBody> filling) {
        var pump = book.outlook(viewer, child);
        open("change", at, corrects, fields -> filling.apply(new ChangeBody(fields, pump)), Optional.empty());
    }

    @Override
    public void figures() {
        var known = book.outlook(viewer, child).implant();
        implant(now(), Optional.empty(), known);
    }

    private void implant(LocalDateTime at, Optional<Long> corrects, Optional<Implant> known) {
        open(
                FIGURES,
                at,
                corrects,
                fields -> {
                    var body = new ImplantBody(fields, kinds.all());
                    known.ifPresent(body::show);
                    return body;
                },
                Optional.empty());
    }

    private void open(
            String name,
            LocalDateTime at,
            Optional<Long> corrects,
            Function<FormFields, EntryForm.Body> bodies,
            Optional<PumpOutlook> due) {
        seen = book.history(viewer, child).stream()
                .map(Line::number)
                .findFirst()
                .orElse(0L);
        var toFigures = name.equals(FIGURES) ? Optional.<Runnable>empty() : Optional.<Runnable>of(this::figures);
        var sums = new SumsPanel(say, due.flatMap(PumpOutlook::window), toFigures);
        page.open(new EntryForm(say, name, at, corrects, bodies, sums, this));
    }

    @Override
    public void check(long number) {
        line(number).filter(Line::waits).ifPresentOrElse(this::check, () -> Told.couldNot(say.say("pump.again.gone")));
    }

    private void check(Line line) {
        if (line.by().equals(viewer.account())) {
            page.open(own());
            return;
        }
        var fixed = book.outlook(viewer, child)
                .implant()
                .flatMap(known -> known.model().fixedFlow());
        page.open(new CheckForm(
                say, line, page.name(line.by()), fixed, again -> check(line.number(), again), this::leave));
    }

    /** A second check needs a second person. */
    private Component own() {
        return Tags.section(
                "hw-sheet u-edged u-onpaper hw-pump-form",
                say.say("pump.again.title"),
                Tags.div("hw-colh", Tags.h2("", say.say("pump.again.title"))),
                Tags.div("hw-banner u-my2", Icon.SECOND.draw(), Tags.div("", new Span(say.say("pump.again.own")))),
                Tags.div("u-row u-end", Tags.button("plain", say.say("pump.form.leave"), pressed -> leave())));
    }

    private void check(long number, PumpBook.Again again) {
        try {
            book.check(viewer, child, number, again);
            Told.done(say.say("pump.again.done"));
        } catch (Overtaken overtaken) {
            Told.couldNot(say.say("pump.again.overtaken"));
        }
        page.close();
        page.changed();
    }

    @Override
    public void correct(long number) {
        line(number)
                .flatMap(Line::entry)
                .ifPresentOrElse(this::correct, () -> Told.couldNot(say.say("pump.form.correct.not")));
    }

    private void correct(PumpEntry wrong) {
        var at = wrong.at().atZone(say.zone()).toLocalDateTime();
        var number = Optional.of(wrong.number());
        if (wrong.what() instanceof Refill refill) {
            refill(refill.elsewhere(), at, number, body -> {
                body.show(refill);
                return body;
            });
        } else if (wrong.what() instanceof Change change) {
            change(at, number, body -> {
                body.show(change);
                return body;
            });
        } else if (wrong.what() instanceof Implant implant) {
            implant(at, number, Optional.of(implant));
        }
    }

    private Optional<Line> line(long number) {
        return book.history(viewer, child).stream()
                .filter(line -> line.number() == number)
                .findFirst();
    }

    private LocalDateTime now() {
        return LocalDateTime.ofInstant(clock.instant(), say.zone());
    }

    @Override
    public PumpSums reckon(NewEntry entry) {
        return book.reckon(viewer, child, entry);
    }

    @Override
    public void enter(NewEntry entry) {
        try {
            book.enter(viewer, child, entry, seen);
            Told.done(say.say("pump.form.sent"));
            page.close();
        } catch (Overtaken overtaken) {
            // what was typed stays, beside what came in between
            seen = book.history(viewer, child).stream()
                    .map(Line::number)
                    .findFirst()
                    .orElse(0L);
            Told.couldNot(say.say("pump.form.overtaken"));
        }
        page.changed();
    }

    @Override
    public void leave() {
        page.close();
    }
}
