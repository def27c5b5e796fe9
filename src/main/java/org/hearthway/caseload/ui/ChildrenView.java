package org.hearthway.caseload.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.text.Normalizer;
import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Language;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.HomeWeek;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;
import org.hearthway.words.Words;

/** Children: every child, where it stands, its next date and its last log; typing finds one. */
@Route("staff/children")
@Menu(title = "caseload.menu.children", order = 2)
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR", "ADMINISTRATOR"})
class ChildrenView extends Div implements BeforeEnterObserver, HasDynamicTitle {

    private static final int LOGS_BACK_DAYS = 30;
    private static final int DATES_AHEAD_DAYS = 400;

    private final transient ChildRegister children;
    private final transient Plans plans;
    private final transient Visits visits;
    private final transient HomeWeek homeWeek;
    private final transient Needs needs;
    private final transient Gate gate;
    private final transient ChildWords childWords;
    private final transient Words words;
    private final transient ClinicSettings settings;
    private final transient Clock clock;
    private final Viewer.Person viewer;
    private final Language language;
    private final Div content = new Div();

    ChildrenView(
            ChildRegister children,
            Plans plans,
            Visits visits,
            HomeWeek homeWeek,
            Needs needs,
            Gate gate,
            ChildWords childWords,
            Words words,
            ClinicSettings settings,
            Clock clock,
            SignedIn signedIn) {
        this.children = children;
        this.plans = plans;
        this.visits = visits;
        this.homeWeek = homeWeek;
        this.needs = needs;
        this.gate = gate;
        this.childWords = childWords;
        this.words = words;
        this.settings = settings;
        this.clock = clock;
        this.viewer = signedIn.require();
        this.language = viewer.language();
        addClassName("hw-worksheet");
        content.addClassName("hw-main");
        add(
                content,
                new KeyBar()
                        .tell(say("caseload.keys.find"), "/")
                        .tell(say("caseload.keys.move"), "J", "K")
                        .tell(say("caseload.keys.open"), say("parts.key.enter"))
                        .remark(say("caseload.keys.written-down")));
    }

    @Override
    public String getPageTitle() {
        return say("caseload.menu.children");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var typed = event.getLocation()
                .getQueryParameters()
                .getSingleParameter("q")
                .orElse("")
                .strip();
        var all = children.all(viewer);
        var found = all.stream().filter(child -> matches(child, typed)).toList();
        content.removeAll();
        var said = typed.isEmpty()
                ? say("caseload.children.count", all.size())
                : say("caseload.children.found", found.size(), all.size(), typed);
        var title = Tags.div("hw-title", Tags.h1(say("caseload.menu.children")), Tags.span("hw-quiet", said));
        content.add(title);
        if (!typed.isEmpty()) {
            title.add(
                    Keys.press(Tags.link("hw-button text", "staff/children", say("caseload.children.all")), "escape"));
        }
        content.add(
                found.isEmpty()
                        ? Tags.div(
                                "hw-sheet hw-empty",
                                Tags.p(
                                        "hw-quiet",
                                        say(all.isEmpty() ? "caseload.children.first" : "caseload.children.none")))
                        : table(found));
    }

    /** Every typed word begins a part of the name; accents and capitals do not matter. */
    static boolean matches(Child child, String typed) {
        var parts = plain(child.fullName()).split("[\\s-]+");
        return Arrays.stream(plain(typed).split("\\s+"))
                .allMatch(word -> Arrays.stream(parts).anyMatch(part -> part.startsWith(word)));
    }

    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
    }

    private Component table(List<Child> found) {
        var table = new NativeTable();
        table.addClassNames("hw-table", "hw-kids");
        table.getElement().setAttribute("aria-label", say("caseload.menu.children"));
        var head = new NativeTableRow();
        for (var column : List.of("kid", "path", "stage", "next", "log", "needs")) {
            var cell = new NativeTableHeaderCell(say("caseload.children.column." + column));
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        table.getHead().add(head);
        var today = today();
        var next = visits.between(viewer, today, today.plusDays(DATES_AHEAD_DAYS)).stream()
                .filter(visit -> visit.endsAt().isAfter(clock.instant()))
                .collect(Collectors.toMap(Visit::child, Function.identity(), (sooner, later) -> sooner));
        var all = plans.all(viewer);
        var waiting = needs.open(viewer).stream()
                .filter(item -> item.aside().isEmpty())
                .collect(Collectors.groupingBy(Needs.Item::child, Collectors.counting()));
        for (int i = 0; i < found.size(); i++) {
            var row = row(found.get(i), all, next, waiting);
            if (i == 0) {
                row.addClassName("on");
            }
            table.getBody().add(row);
        }
        return table;
    }

    private NativeTableRow row(
            Child child, Map<ChildId, List<Plan>> all, Map<ChildId, Visit> next, Map<ChildId, Long> waiting) {
        var row = Keys.row(new NativeTableRow(), child.id().toString());
        var plans = all.getOrDefault(child.id(), List.of());
        var open = gate.allows(viewer, Action.SEE_FOLDER, child.id());
        var name = open
                ? Keys.press(Tags.link("kidn", "staff/child/" + child.id(), child.fullName()), "enter")
                : Tags.span("kidn", child.fullName());
        var age = say("caseload.children.age", child.ageOn(today()));
        var level = child.gmfcs().map(l -> " · " + say("caseload.gmfcs", l)).orElse("");
        row.add(cell("kid", name, Tags.div("hw-sub", Tags.span("", age + level))));
        row.add(text("path", childWords.paths(language, plans)));
        row.add(text("stage", childWords.stages(language, plans, today())));
        row.add(next(Optional.ofNullable(next.get(child.id()))));
        row.add(text("log", open ? lastLog(child.id()) : ""));
        var count = waiting.getOrDefault(child.id(), 0L);
        row.add(count == 0 ? text("needs", "") : cell("needs", Tags.span("hw-count", String.valueOf(count))));
        return row;
    }

    private NativeTableCell next(Optional<Visit> next) {
        return next.map(visit -> cell(
                        "next",
                        Tags.span("hw-num", words.date(language, visit.start().toLocalDate())),
                        Tags.div("hw-sub", Tags.span("", visit.kind().name().in(language)))))
                .orElseGet(() -> text("next", say("caseload.children.no-date")));
    }

    private String lastLog(ChildId child) {
        var today = today();
        return homeWeek.entries(viewer, child, today.minusDays(LOGS_BACK_DAYS), today).stream()
                .map(logged -> logged.entry().day())
                .max(LocalDate::compareTo)
                .map(day -> say("caseload.children.logged", ChronoUnit.DAYS.between(day, today)))
                .orElseGet(() -> say("caseload.children.not-logged", LOGS_BACK_DAYS));
    }

    private static NativeTableCell text(String classes, String text) {
        return cell(classes, Tags.span("", text));
    }

    private static NativeTableCell cell(String classes, Component... parts) {
        var cell = new NativeTableCell(parts);
        cell.addClassName(classes);
        return cell;
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), settings.zone());
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
