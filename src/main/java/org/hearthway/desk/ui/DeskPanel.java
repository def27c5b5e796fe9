package org.hearthway.desk.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.access.Account;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.desk.Board.Case;
import org.hearthway.desk.Board.Row;
import org.hearthway.desk.Board.Wanted;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.reminder.Outbox.Channel;
import org.hearthway.reminder.Outbox.Message;
import org.hearthway.reminder.Outbox.State;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitKind;
import org.hearthway.visit.Visits;
import org.hearthway.words.Words;

/** Beside the list: the text itself, to whom, what happened so far, and what can be done about one row. */
final class DeskPanel {

    /** The first thing that can be done about a row. */
    static final String FIRST = "desk-first";

    private static final int NOTE_MAX = 500;

    private final Words words;
    private final Language language;
    private final DeskWords deskWords;
    private final DeskActs acts;

    DeskPanel(Words words, Language language, DeskWords deskWords, DeskActs acts) {
        this.words = words;
        this.language = language;
        this.deskWords = deskWords;
        this.acts = acts;
    }

    /**
     * What the panel shows beside the row.
     *
     * @param name the child's name
     * @param messages everything that was written or called about the child
     * @param family the caregivers
     * @param kinds kinds of visit that can be booked
     * @param firstDay the first open day to propose
     * @param answers what caregivers said of the visit, when that differs
     */
    record Beside(
            String name,
            List<Message> messages,
            List<Account> family,
            List<VisitKind> kinds,
            LocalDate firstDay,
            List<Visits.Given> answers) {}

    List<Component> draw(Row row, Beside beside) {
        var parts = new java.util.ArrayList<Component>();
        row.wanted()
                .filter(wanted -> row.says() != Case.REFILL_CHECKED)
                .ifPresent(wanted -> parts.add(toBook(row, wanted, beside)));
        if (row.message().isPresent()
                && row.says() != Case.ASKED_TO_MOVE
                && row.says() != Case.DISAGREED
                && row.says() != Case.CLOSED_DAY
                && row.says() != Case.OVER) {
            parts.add(message(row, row.message().get(), beside));
        }
        row.visit().ifPresent(visit -> parts.add(visit(row, visit, beside)));
        parts.add(family(beside));
        var history = history(row, beside.messages());
        if (!history.isEmpty()) {
            parts.add(happened(history));
        }
        return parts;
    }

    private Section sheet(String title) {
        var head = Tags.div("hw-colh", Tags.h2("", title));
        var leave = Tags.round(Icon.CLOSE, say("desk.panel.leave"), pressed -> acts.leave());
        leave.addClassName("hw-leave");
        head.add(Tags.span("grow", ""), leave);
        return Tags.section("hw-sheet", title, head);
    }

    private Section message(Row row, Message message, Beside beside) {
        var call = message.channel() == Channel.CALL;
        var sheet = sheet(say(call ? "desk.panel.call" : "desk.panel.message", beside.name()));
        var to = call
                ? say("desk.panel.call-to", message.personName())
                : say("desk.panel.mail-to", message.personName(), message.address(), deskWords.due(language, message));
        sheet.add(Tags.p("hw-sub u-mb2", to));
        if (call) {
            sheet.add(phone(message.address()));
        }
        // a person's call sheet has its own few lines; a mail is shown as the family gets it
        var letter = Tags.div("hw-letter");
        letter.getElement().setAttribute("lang", message.language().tag());
        letter.add(Tags.p("subject", message.subject()), Tags.p("body", message.body()));
        sheet.add(letter);
        stateWords(row, message).ifPresent(says -> sheet.add(Tags.p("hw-s u-my2", says)));
        if (row.isSendable()) {
            sheet.add(sending(row));
        }
        if (row.says() == Case.TO_CALL || row.says() == Case.FAILED) {
            sheet.add(calling(row));
        }
        return sheet;
    }

    private Optional<String> stateWords(Row row, Message message) {
        return switch (row.says()) {
            case RETRYING -> Optional.of(say("desk.state.retrying", message.tries(), deskWords.due(language, message)));
            case HELD, MAY_HAVE_GONE_TWICE, WRITTEN_TO_FOLDER, FAILED ->
                Optional.of(say("desk.state.says." + row.says().name()));
            case TO_CALL -> Optional.of(message.note()).filter(note -> !note.isBlank());
            default -> Optional.empty();
        };
    }

    private Component sending(Row row) {
        var held = row.says() == Case.HELD;
        var send = Tags.button("main", say("desk.send"), pressed -> acts.send(List.of(row)));
        send.setId(FIRST);
        var hold = Keys.press(
                Tags.button(
                        "plain", say(held ? "desk.let-go" : "desk.hold"), pressed -> acts.hold(List.of(row), !held)),
                "h");
        return Tags.div("u-row1", send, hold);
    }

    private Component calling(Row row) {
        var note = new TextField(say("desk.call.note"));
        note.setMaxLength(NOTE_MAX);
        note.setWidthFull();
        note.setId(FIRST);
        var reached = Tags.button("main", say("desk.call.reached"), pressed -> noted(row, true, note));
        var missed = Tags.button("plain", say("desk.call.missed"), pressed -> noted(row, false, note));
        return Tags.div("hw-stack u-gap2", note, Tags.div("u-row1", reached, missed));
    }

    private void noted(Row row, boolean reached, TextField note) {
        try {
            acts.called(row, reached, note.getValue().strip());
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), Map.of("note", note), words, language);
        }
    }

    private Section visit(Row row, Visit visit, Beside beside) {
        var sheet = sheet(say("desk.panel.visit"));
        var kind = visit.kind().name().in(language);
        sheet.add(Tags.p("hw-b", kind + " · " + deskWords.start(language, visit)));
        var place = visit.place().isBlank() ? "" : " · " + visit.place();
        sheet.add(
                Tags.p("hw-sub u-mb2", say("desk.panel.visit-with", visit.kind().with(), visit.minutes()) + place));
        if (row.says() == Case.DISAGREED) {
            sheet.add(Tags.p("hw-s", say("desk.disagreed")), bothAnswers(beside));
        } else {
            sheet.add(Tags.p("hw-s", say("desk.answer." + visit.answer().name())));
        }
        if (row.says() != Case.DISAGREED && !visit.wish().isBlank()) {
            sheet.add(Tags.div("hw-letter u-my2", Tags.p("", say("desk.wish", visit.wish()))));
        }
        if (row.says() == Case.OVER) {
            var came = Tags.button("main", say("desk.came"), pressed -> acts.came(visit, true));
            came.setId(FIRST);
            sheet.add(Tags.div(
                    "u-row1 u-mt3",
                    came,
                    Tags.button("plain", say("desk.came-not"), pressed -> acts.came(visit, false))));
            return sheet;
        }
        if (visit.answer() != Visit.Answer.CONFIRMED) {
            sheet.add(Tags.div(
                    "u-mt3",
                    Keys.press(
                            Tags.button(
                                    "plain",
                                    say(row.says() == Case.DISAGREED ? "desk.settle-yes" : "desk.said-yes"),
                                    pressed -> acts.saidYes(visit)),
                            "y")));
        }
        var move = new VisitForm(words, language).moving(visit, start -> acts.move(visit, start));
        sheet.add(details("desk.move", isToMove(row), move));
        var cancel = Tags.button("plain", say("desk.cancel.do"), pressed -> acts.cancel(visit));
        sheet.add(details("desk.cancel", false, Tags.p("hw-sub u-mb2", say("desk.cancel.says")), cancel));
        return sheet;
    }

    private static boolean isToMove(Row row) {
        return row.says() == Case.ASKED_TO_MOVE || row.says() == Case.DISAGREED || row.says() == Case.CLOSED_DAY;
    }

    /** Who said what and when, each in a line of its own. */
    private Component bothAnswers(Beside beside) {
        var list = new OrderedList();
        list.addClassNames("hw-s", "u-list", "hw-answers");
        for (var given : beside.answers()) {
            var name = beside.family().stream()
                    .filter(person -> person.id().equals(given.by()))
                    .map(Account::name)
                    .findFirst()
                    .orElseGet(() -> say("desk.somebody"));
            var item = new ListItem(
                    Tags.span("hw-b", name),
                    Tags.span("", say("desk.said." + given.answer().name())),
                    Tags.span("hw-sub", deskWords.moment(language, given.at())));
            if (!given.wish().isBlank()) {
                item.add(Tags.div("hw-letter", Tags.p("", given.wish())));
            }
            list.add(item);
        }
        return list;
    }

    private NativeDetails details(String key, boolean open, Component... inside) {
        var details = new NativeDetails(say(key));
        details.addClassName("hw-unfold");
        details.setContent(Tags.div("", inside));
        details.setOpen(open);
        return details;
    }

    private Section toBook(Row row, Wanted wanted, Beside beside) {
        var sheet = sheet(say("desk.panel.book", beside.name()));
        sheet.add(Tags.p("hw-b", deskWords.kind(language, wanted)));
        sheet.add(Tags.p("hw-sub u-mb2", deskWords.visit(language, row)));
        if (row.says() == Case.OUTSIDE_WINDOW) {
            sheet.add(Tags.p("hw-s", say("desk.panel.outside")));
            return sheet;
        }
        sheet.add(new VisitForm(words, language)
                .booking(
                        beside.kinds(),
                        Optional.of(wanted.kind()),
                        Optional.of(wanted.purpose()),
                        beside.firstDay(),
                        booking -> acts.book(row.child(), booking)));
        return sheet;
    }

    private Component family(Beside beside) {
        var sheet = sheet(say("desk.panel.family"));
        var list = new Div();
        list.addClassNames("hw-s", "u-list");
        for (var person : beside.family()) {
            var line = Tags.div("hw-person", Tags.span("hw-b", person.name()));
            line.add(
                    Tags.span("hw-sub", say("desk.language." + person.language().name())));
            if (!person.phone().isBlank()) {
                line.add(phone(person.phone()));
            }
            list.add(line);
        }
        sheet.add(beside.family().isEmpty() ? Tags.p("hw-sub", say("desk.panel.no-family")) : list);
        return sheet;
    }

    private static Component phone(String number) {
        var link = new Anchor("tel:" + number.replaceAll("[^+0-9]", ""), number);
        link.addClassName("hw-num");
        return link;
    }

    private static List<Message> history(Row row, List<Message> messages) {
        return messages.stream()
                .filter(message -> message.state() != State.CANCELLED)
                .filter(message -> row.visit()
                        .map(visit -> message.visit().filter(visit.id()::equals).isPresent())
                        .orElseGet(() -> row.message()
                                .filter(own -> own.id().equals(message.id()))
                                .isPresent()))
                .sorted(Comparator.comparing(Message::due))
                .toList();
    }

    private Section happened(List<Message> history) {
        var list = new OrderedList();
        list.addClassNames("hw-s", "u-list");
        history.forEach(message -> {
            var pip = Tags.span("hw-pip " + pip(message.state()), "");
            pip.getElement().setAttribute("aria-hidden", "true");
            var says = say("desk.state." + message.state().name(), deskWords.channel(language, message))
                    + (message.note().isBlank() ? "" : " · " + message.note());
            var item = new ListItem(pip, Tags.span("hw-quiet", deskWords.due(language, message)), Tags.span("", says));
            item.addClassName("u-event");
            list.add(item);
        });
        var sheet = sheet(say("desk.panel.happened"));
        sheet.add(list);
        return sheet;
    }

    private static String pip(State state) {
        return switch (state) {
            case SENT, CALLED, WRITTEN_TO_FOLDER, MAY_HAVE_GONE_TWICE -> "done";
            case SENDING, RETRYING, TO_CALL -> "now";
            case NOT_REACHED -> "miss";
            case PLANNED, HELD, CANCELLED -> "";
        };
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
