package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Article;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextArea;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Invalid;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.visit.Visit;

/** One visit: when, where, what to bring, what the family said of it, and the two answers. */
class VisitCard extends Article {

    /** What a family can say. */
    interface Answers {
        void confirm(Visit visit);

        /** Whether the wish was taken; not when somebody else changed the visit in between. */
        boolean askToMove(Visit visit, String wish);
    }

    private static final String AWAY = "u-away";

    private final Div form = Tags.div("acts wide");

    /**
     * A card.
     *
     * @param was when it was to start, if that is new to the reader
     */
    VisitCard(
            Reader reader,
            Visit visit,
            Optional<LocalDateTime> was,
            boolean mayAnswer,
            boolean disputed,
            Answers answers) {
        addClassName("hw-visit");
        var day = visit.start().toLocalDate();
        add(Tags.div(
                "hw-leaf",
                Tags.span("", reader.words().shortMonth(reader.language(), day)),
                Bits.el("b", "", reader.say("family.number", day.getDayOfMonth())),
                Tags.span("", reader.large(reader.words().shortWeekday(reader.language(), day)))));
        var words = Tags.div(
                "",
                Bits.el("h2", "name u-plain", reader.text(visit.kind().name())),
                Tags.p(
                        "meta",
                        reader.say("family.dates.at", visit.start().toLocalTime(), length(reader, visit.minutes()))));
        was.ifPresent(old -> words.add(Bits.el("p", "meta", PathNews.struck(reader, at(reader, old)))));
        if (!visit.place().isBlank()) {
            words.add(Tags.p("meta", visit.place()));
        }
        words.add(Tags.p(
                "meta", reader.say("family.dates.with", reader.text(visit.kind().with()))));
        if (!visit.kind().bring().isEmpty()) {
            words.add(Tags.p(
                    "meta",
                    reader.say("family.dates.bring", bring(reader, visit.kind().bring()))));
        }
        expect(reader, visit.kind().expect()).ifPresent(words::add);
        words.add(state(reader, visit));
        add(words);
        if (disputed) {
            add(Bits.strip("quiet wide", Icon.INFO, reader.say("family.dates.disputed")));
        }
        if (mayAnswer) {
            act(reader, visit, answers);
        }
    }

    /** "Tuesday, March 17, 10:30 AM". */
    static String at(Reader reader, LocalDateTime start) {
        return reader.large(
                reader.say("family.dates.day-at", PathWords.day(reader, start.toLocalDate()), start.toLocalTime()));
    }

    private static String length(Reader reader, int minutes) {
        return minutes % 60 == 0 ? reader.say("family.length", minutes / 60) : reader.say("family.minutes", minutes);
    }

    private static Optional<Component> expect(Reader reader, List<Bilingual> steps) {
        if (steps.isEmpty()) {
            return Optional.empty();
        }
        var list = Bits.el("ul", "hw-expect");
        steps.forEach(step -> list.add(Bits.el("li", "", reader.text(step))));
        return Optional.of(
                Bits.el("details", "meta", Bits.el("summary", "", new Span(reader.say("family.dates.expect"))), list));
    }

    private static String bring(Reader reader, List<Bilingual> things) {
        return things.stream().map(reader::text).collect(Collectors.joining(" · "));
    }

    private static Component state(Reader reader, Visit visit) {
        return switch (visit.answer()) {
            case NONE -> Tags.span("", "");
            case CONFIRMED -> state("", Icon.CHECK, reader.say("family.dates.said-yes"));
            case ASKED_TO_MOVE -> {
                var asked = Tags.div("", state("asked", Icon.MOVE, reader.say("family.dates.you-asked")));
                if (!visit.wish().isBlank()) {
                    asked.add(Tags.p("meta", reader.say("family.dates.your-wish", visit.wish())));
                }
                asked.add(Tags.p("meta", reader.say("family.dates.stays")));
                yield asked;
            }
        };
    }

    private static Component state(String kind, Icon icon, String words) {
        var state = Tags.span("hw-state u-mt1 " + kind, icon.draw("sm"));
        state.add(Tags.span("", words));
        return state;
    }

    private void act(Reader reader, Visit visit, Answers answers) {
        var acts = Tags.div("acts");
        if (visit.answer() != Visit.Answer.CONFIRMED) {
            acts.add(Tags.button(
                    "plain", Icon.CHECK, reader.say("family.dates.yes"), pressed -> answers.confirm(visit)));
        }
        if (visit.answer() != Visit.Answer.ASKED_TO_MOVE) {
            acts.add(Tags.button("plain", Icon.MOVE, reader.say("family.dates.move"), pressed -> {
                show(form, acts);
                form.getChildren()
                        .filter(TextArea.class::isInstance)
                        .map(TextArea.class::cast)
                        .forEach(TextArea::focus);
            }));
        }
        if (acts.getComponentCount() == 1) {
            acts.addClassName("one");
        }
        // not invisible to the browser, which brings a draft back into it
        form.addClassName(AWAY);
        var wish = new TextArea(reader.say("family.dates.wish"));
        wish.setHelperText(reader.say("family.dates.wish.help"));
        wish.setWidthFull();
        var draft = new Draft(reader, "wish-" + visit.id(), wish);
        wish.addValueChangeListener(typed -> {
            if (typed.isFromClient()) {
                show(form, acts);
            }
        });
        form.add(
                draft,
                Tags.button("plain", reader.say("family.cancel"), pressed -> {
                    draft.forget();
                    wish.clear();
                    show(acts, form);
                }),
                Tags.button(
                        "main", reader.say("family.dates.send"), pressed -> send(reader, visit, answers, wish, draft)));
        add(acts, form);
    }

    private static void show(Div shown, Div away) {
        shown.removeClassName(AWAY);
        away.addClassName(AWAY);
    }

    private static void send(Reader reader, Visit visit, Answers answers, TextArea wish, Draft draft) {
        try {
            if (answers.askToMove(visit, wish.getValue())) {
                draft.forget();
            }
        } catch (Invalid invalid) {
            wish.setErrorMessage(reader.say(invalid.problems().get(0)));
            wish.setInvalid(true);
            wish.focus();
        }
    }
}
