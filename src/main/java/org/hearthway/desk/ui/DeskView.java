package org.hearthway.desk.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Aside;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Location;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.desk.Board;
import org.hearthway.desk.Board.Row;
import org.hearthway.desk.Desk;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.TallyChanged;
import org.hearthway.parts.Told;
import org.hearthway.reminder.Outbox;
import org.hearthway.reminder.Outbox.Message;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;
import org.hearthway.words.Words;

/** The desk: what goes out, what waits for an answer, who was not reached, what is to book. */
@Route("staff/desk")
@Menu(title = "desk.title", order = 3)
@RolesAllowed({"COORDINATOR", "NURSE"})
class DeskView extends Div implements BeforeEnterObserver, HasDynamicTitle, DeskActs {

    static final String PLACE = "staff/desk";

    private final transient Desk desk;
    private final transient Outbox outbox;
    private final transient Visits visits;
    private final transient ChildRegister children;
    private final transient Households households;
    private final transient Accounts accounts;
    private final transient ClinicCalendar calendar;
    private final transient ClinicSettings settings;
    private final transient Clock clock;
    private final transient Words words;
    private final transient DeskWords deskWords;
    private final Viewer.Person viewer;
    private final Language language;
    private final Div title = Tags.div("hw-title");
    private final Div list = Tags.div("hw-stack u-gap2 u-top");
    private final Aside panel = new Aside();
    private final transient DeskRows rows = new DeskRows();
    private transient Map<ChildId, String> names = Map.of();

    DeskView(
            Desk desk,
            Outbox outbox,
            Visits visits,
            ChildRegister children,
            Households households,
            Accounts accounts,
            ClinicCalendar calendar,
            ClinicSettings settings,
            Clock clock,
            Words words,
            DeskWords deskWords,
            SignedIn signedIn) {
        this.desk = desk;
        this.outbox = outbox;
        this.visits = visits;
        this.children = children;
        this.households = households;
        this.accounts = accounts;
        this.calendar = calendar;
        this.settings = settings;
        this.clock = clock;
        this.words = words;
        this.deskWords = deskWords;
        this.viewer = signedIn.require();
        this.language = viewer.language();
        addClassName("hw-worksheet");
        panel.addClassNames("hw-stack", "u-gap3", "u-top", "hw-panel");
        panel.getElement().setAttribute("aria-label", say("desk.panel"));
        var keys = new KeyBar()
                .tell(say("desk.keys.move"), "J", "K")
                .tell(say("desk.keys.open"), say("parts.key.enter"))
                .tell(say("desk.keys.choose"), "X")
                .tell(say("desk.keys.to-here"), "⇧", "X")
                .tell(say("desk.keys.hold"), "H")
                .tell(say("desk.keys.yes"), "Y")
                .tell(say("desk.keys.book"), "B")
                .tell(say("desk.keys.lists"), "1…5")
                .remark(say("desk.keys.zone"));
        add(Tags.div("hw-main", title, Tags.div("hw-cols u-side22 hw-desk-cols", list, panel)), keys);
    }

    @Override
    public String getPageTitle() {
        return say("desk.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var asked = event.getLocation().getQueryParameters();
        read();
        var row = asked.getSingleParameter("row").flatMap(rows::row);
        rows.show(DeskShow.of(asked.getSingleParameter("show")), row);
        draw(false, Optional.empty());
        panel.setClassName("open", row.isPresent());
    }

    private void read() {
        rows.read(desk.board(viewer));
        names = children.all(viewer).stream().collect(Collectors.toMap(Child::id, Child::fullName));
    }

    private void draw(boolean focus, Optional<Row> next) {
        var above = new DeskHead(words, language, this);
        title.removeAll();
        title.add(above.title(rows, today()));
        list.removeAll();
        if (!rows.chosen().isEmpty()) {
            list.add(above.bulk(rows));
        }
        var here = rows.settle(next);
        if (here.isEmpty()) {
            list.add(Tags.div(
                    "hw-sheet hw-empty",
                    Tags.p("hw-quiet", say("desk.empty." + rows.show().name()))));
            panel.removeAll();
            return;
        }
        list.add(new DeskTable(words, language, deskWords, this, outbox.sendsMail()).draw(rows, names, focus));
        drawPanel(here.get());
    }

    private void drawPanel(Row row) {
        panel.removeAll();
        new DeskPanel(words, language, deskWords, this).draw(row, beside(row)).forEach(panel::add);
    }

    private DeskPanel.Beside beside(Row row) {
        var tomorrow = today().plusDays(1);
        var first = row.wanted()
                .map(wanted -> wanted.from().isAfter(tomorrow) ? wanted.from() : tomorrow)
                .orElse(tomorrow);
        return new DeskPanel.Beside(
                names.getOrDefault(row.child(), ""),
                desk.messages(viewer, row.child()),
                family(row.child()),
                visits.kinds(),
                calendar.onOrAfter(first),
                row.says() == Board.Case.DISAGREED ? answers(row) : List.of());
    }

    private List<Visits.Given> answers(Row row) {
        return row.visit()
                .map(Visit::id)
                .map(id -> visits.disputed(viewer).getOrDefault(id, List.of()))
                .orElse(List.of());
    }

    private List<Account> family(ChildId child) {
        var caregivers = households.caregivers(viewer, child).stream()
                .map(Households.Caregiver::account)
                .toList();
        var known = accounts.byId(viewer, caregivers);
        return caregivers.stream()
                .map(known::get)
                .filter(java.util.Objects::nonNull)
                .toList();
    }

    @Override
    public void refresh() {
        again(Optional.empty());
    }

    /** A form for any child and any kind of visit. */
    @Override
    public void beginBooking() {
        panel.removeAll();
        panel.setClassName("open", true);
        var child = new ComboBox<Child>(say("desk.form.child"));
        child.setItems(children.all(viewer));
        child.setItemLabelGenerator(Child::fullName);
        child.setWidthFull();
        rows.atHand()
                .flatMap(row -> children.all(viewer).stream()
                        .filter(one -> one.id().equals(row.child()))
                        .findFirst())
                .ifPresent(child::setValue);
        var form = new VisitForm(words, language)
                .booking(
                        visits.kinds(),
                        Optional.empty(),
                        Optional.empty(),
                        calendar.onOrAfter(today().plusDays(1)),
                        booking -> {
                            child.setInvalid(child.getValue() == null);
                            child.setErrorMessage(say("desk.form.no-child"));
                            if (child.getValue() != null) {
                                book(child.getValue().id(), booking);
                            }
                        });
        var head = Tags.div("hw-colh", Tags.h2("", say("desk.book-any")));
        panel.add(Tags.section("hw-sheet", say("desk.book-any"), head, child, form));
        child.focus();
    }

    @Override
    public void open(Row row) {
        var moved = !rows.isAtHand(row);
        rows.takeInHand(row);
        panel.setClassName("open", true);
        if (moved) {
            drawPanel(row);
            remember(row.id());
        }
    }

    @Override
    public void begin(Row row) {
        open(row);
        UI.getCurrent().getPage().executeJs("document.getElementById($0)?.focus()", DeskPanel.FIRST);
    }

    @Override
    public void leave() {
        panel.setClassName("open", false);
    }

    /** The row stands in the address, so that a reload lands on it. */
    private void remember(String row) {
        var query = new LinkedHashMap<String, String>();
        query.put("show", rows.show().inAddress());
        query.put("row", row);
        UI.getCurrent().getPage().getHistory().replaceState(null, new Location(PLACE, QueryParameters.simple(query)));
    }

    @Override
    public void choose(Row row, boolean ticked) {
        rows.choose(row, ticked);
        draw(true, Optional.empty());
    }

    @Override
    public void chooseUpTo(Row row) {
        rows.chooseUpTo(row);
        draw(true, Optional.empty());
    }

    @Override
    public void chooseAll(boolean ticked) {
        rows.chooseAll(ticked);
        draw(true, Optional.empty());
    }

    @Override
    public void send(List<Row> all) {
        each(all, message -> outbox.sendNow(viewer, message.id(), message.version()), "desk.done.sent");
    }

    @Override
    public void hold(List<Row> all, boolean held) {
        each(
                all,
                message -> outbox.hold(viewer, message.id(), held, message.version()),
                held ? "desk.done.held" : "desk.done.let-go");
    }

    private interface OfMessage {
        void does(Message message);
    }

    /** Works the rows one by one: what somebody else changed in between is left as it is, and counted. */
    private void each(List<Row> all, OfMessage work, String done) {
        var next = rows.after(all.get(all.size() - 1));
        var overtaken = 0;
        for (var row : all) {
            try {
                row.message().ifPresent(work::does);
            } catch (Overtaken changed) {
                overtaken++;
            }
        }
        rows.chooseAll(false);
        if (overtaken > 0) {
            Told.couldNot(say("desk.overtaken", overtaken));
        }
        if (overtaken < all.size()) {
            Told.done(say(done, all.size() - overtaken));
        }
        again(Optional.of(next));
    }

    @Override
    public void called(Row row, boolean reached, String note) {
        var message = row.message().orElseThrow();
        work(
                row,
                reached ? "desk.done.reached" : "desk.done.missed",
                () -> outbox.called(viewer, message.id(), reached, note, message.version()));
    }

    @Override
    public void saidYes(Visit visit) {
        work(visit, "desk.done.yes", () -> visits.confirm(viewer, visit.id(), visit.sequence()));
    }

    @Override
    public void move(Visit visit, LocalDateTime start) {
        work(visit, "desk.done.moved", () -> visits.move(viewer, visit.id(), start, visit.version()));
    }

    @Override
    public void cancel(Visit visit) {
        work(visit, "desk.done.cancelled", () -> visits.cancel(viewer, visit.id(), visit.version()));
    }

    @Override
    public void came(Visit visit, boolean came) {
        work(visit, "desk.done.came", () -> visits.attended(viewer, visit.id(), came, visit.version()));
    }

    @Override
    public void book(ChildId child, Visits.Booking booking) {
        var next = rows.atHand().map(rows::after);
        visits.book(viewer, child, booking);
        Told.done(say(
                "desk.done.booked",
                names.getOrDefault(child, ""),
                booking.start().toLocalDate()));
        again(next);
    }

    private void work(Visit visit, String done, Runnable work) {
        rows.atHand()
                .filter(row ->
                        row.visit().map(Visit::id).filter(visit.id()::equals).isPresent())
                .ifPresent(row -> work(row, done, work));
    }

    private void work(Row row, String done, Runnable work) {
        var next = rows.after(row);
        try {
            work.run();
            Told.done(say(done));
        } catch (Overtaken changed) {
            Told.couldNot(say("desk.overtaken", 1));
        }
        again(Optional.of(next));
    }

    /** Reads the desk anew; the row at hand stays, or the next one follows when it is gone. */
    private void again(Optional<Row> next) {
        read();
        draw(true, next);
        TallyChanged.tell();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), settings.zone());
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
