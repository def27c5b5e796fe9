package org.hearthway.caseload.ui;

import com.vaadin.flow.component.ScrollOptions;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.Needs.Item;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.parts.TallyChanged;
import org.hearthway.parts.Told;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.hearthway.task.Task;
import org.hearthway.task.TaskWords;
import org.hearthway.task.Tasks;
import org.hearthway.words.Words;

/** Needs a look: the children for whom somebody must do something, most urgent first. */
@Route("staff/needs")
@Menu(title = "caseload.menu.needs", order = 1)
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class NeedsView extends Div implements BeforeEnterObserver, HasDynamicTitle, NeedRow.Acts {

    private static final int LEFT_DAYS = 14;

    private final transient Needs needs;
    private final transient NeedWords needWords;
    private final transient ChildWords childWords;
    private final transient ChildRegister children;
    private final transient Plans plans;
    private final transient Tasks tasks;
    private final transient TaskWords taskWords;
    private final transient Gate gate;
    private final transient Words words;
    private final transient ClinicSettings settings;
    private final transient Clock clock;
    private final Viewer.Person viewer;
    private final Language language;
    private final Div title = new Div();
    private final Div list = new Div();
    private final Div foot = new Div();
    private Show show = Show.EVERYONE;

    NeedsView(
            Needs needs,
            NeedWords needWords,
            ChildWords childWords,
            ChildRegister children,
            Plans plans,
            Tasks tasks,
            TaskWords taskWords,
            Gate gate,
            Words words,
            ClinicSettings settings,
            Clock clock,
            SignedIn signedIn) {
        this.needs = needs;
        this.needWords = needWords;
        this.childWords = childWords;
        this.children = children;
        this.plans = plans;
        this.tasks = tasks;
        this.taskWords = taskWords;
        this.gate = gate;
        this.words = words;
        this.settings = settings;
        this.clock = clock;
        this.viewer = signedIn.require();
        this.language = viewer.language();
        addClassName("hw-worksheet");
        title.addClassName("hw-title");
        foot.addClassName("u-foot");
        var keys = new KeyBar()
                .tell(say("caseload.keys.move"), "J", "K")
                .tell(say("caseload.keys.step"), say("parts.key.enter"))
                .tell(say("caseload.keys.open"), "O")
                .tell(say("caseload.keys.take"), "A")
                .tell(say("caseload.keys.see"), "E")
                .tell(say("caseload.keys.aside"), "S")
                .tell(say("caseload.keys.close"), "C")
                .tell(say("caseload.keys.print"), "P")
                .remark(say("caseload.keys.written-down"));
        add(Tags.div("hw-main", title, list, foot), keys);
    }

    @Override
    public String getPageTitle() {
        return say("caseload.menu.needs");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        show = Show.of(event.getLocation().getQueryParameters().getSingleParameter("show"));
        draw(Optional.empty());
    }

    private void draw(Optional<UUID> atHand) {
        var open = needs.open(viewer);
        var shown = show == Show.LEFT
                ? leftItems()
                : open.stream().filter(item -> show.shows(item, viewer)).toList();
        var mine = tasks.mine(viewer);
        drawTitle(open, shown, mine);
        drawFoot();
        list.removeAll();
        if (show == Show.TASKS) {
            drawTasks(mine);
            return;
        }
        if (shown.isEmpty()) {
            list.add(Tags.div("hw-sheet hw-empty", Tags.p("hw-quiet", say("caseload.empty." + show.name()))));
            return;
        }
        drawTable(shown, atHand);
    }

    private List<Item> leftItems() {
        var since = today().minusDays(LEFT_DAYS).atStartOfDay(settings.zone()).toInstant();
        return needs.left(viewer, since);
    }

    /** What waits for this person by name or by role, late or not. */
    private void drawTasks(List<Task> mine) {
        var kids = children.all(viewer).stream().collect(Collectors.toMap(Child::id, Child::fullName));
        list.add(new MyTasks(words, viewer, taskWords, today(), kids).draw(mine, this::done));
    }

    private void done(Task task) {
        try {
            tasks.end(viewer, task.id(), Task.Outcome.DONE, "", task.version());
            Told.done(say("caseload.task.done"));
        } catch (Overtaken overtaken) {
            Told.couldNot(say("caseload.overtaken"));
        }
        draw(Optional.empty());
        TallyChanged.tell();
    }

    private void drawTitle(List<Item> open, List<Item> shown, List<Task> mine) {
        title.removeAll();
        var kids = shown.stream().map(Item::child).distinct().count();
        var filters = Tags.div("hw-filters");
        filters.getElement().setAttribute("role", "group").setAttribute("aria-label", say("caseload.filters"));
        var key = 0;
        for (var one : Show.values()) {
            key++;
            var count = one == Show.TASKS
                    ? mine.size()
                    : open.stream().filter(item -> one.shows(item, viewer)).count();
            var chip = Tags.link("hw-chip", "staff/needs?show=" + one.inAddress(), say("caseload.show." + one.name()));
            chip.getElement()
                    .setAttribute("aria-pressed", String.valueOf(one == show))
                    .setAttribute("role", "button");
            if (one != Show.LEFT && (one != Show.EVERYONE || show != one)) {
                chip.add(Tags.span("hw-count", String.valueOf(count)));
            }
            if (one == show) {
                // on a phone their row is longer than the screen
                chip.scrollIntoView(new ScrollOptions(
                        ScrollOptions.Behavior.AUTO, ScrollOptions.Alignment.NEAREST, ScrollOptions.Alignment.CENTER));
            }
            filters.add(Keys.press(chip, String.valueOf(key)));
        }
        title.add(
                Tags.h1(say("caseload.menu.needs")),
                Tags.span(
                        "hw-quiet",
                        show == Show.TASKS
                                ? words.longDate(language, today())
                                : say("caseload.summary", words.longDate(language, today()), shown.size(), kids)),
                Tags.span("grow", ""),
                filters);
    }

    private void drawFoot() {
        foot.removeAll();
        var refresh = Keys.press(
                Tags.button("text u-short", say("caseload.refresh"), pressed -> draw(Optional.empty())), "r");
        refresh.getElement().setAttribute("data-on-return", true);
        var print = Keys.press(
                Tags.button(
                        "text u-short",
                        say("caseload.print"),
                        pressed -> UI.getCurrent().getPage().executeJs("window.print()")),
                "p");
        var asOf = words.time(language, clock.instant().atZone(settings.zone()).toLocalTime());
        foot.add(
                Tags.p("hw-sub", say("caseload.rule")),
                Tags.div("hw-sub", Tags.span("", say("caseload.as-of", asOf)), refresh, print));
    }

    private void drawTable(List<Item> shown, Optional<UUID> atHand) {
        var table = new NativeTable();
        table.addClassNames("hw-table", "hw-looks");
        table.getElement().setAttribute("aria-label", say("caseload.menu.needs"));
        var head = new NativeTableRow();
        for (var column : List.of("kid", "by", "why", "who", "step")) {
            var cell = new NativeTableHeaderCell(say("caseload.column." + column));
            cell.addClassName("c-" + column);
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        table.getHead().add(head);
        var rows = rows(shown);
        rows.forEach((item, row) -> table.getBody().add(row));
        list.add(table);
        var first = rows.entrySet().stream()
                .filter(entry -> atHand.filter(entry.getKey().id()::equals).isPresent())
                .map(Map.Entry::getValue)
                .findFirst();
        first.or(() -> rows.values().stream().findFirst()).ifPresent(row -> {
            row.addClassName("on");
            if (atHand.isPresent()) {
                Keys.focus(row);
            }
        });
    }

    /** Rows by item, a child's together, the child with the most urgent first. */
    private Map<Item, NativeTableRow> rows(List<Item> shown) {
        var byChild =
                shown.stream().collect(Collectors.groupingBy(Item::child, LinkedHashMap::new, Collectors.toList()));
        var kids = children.all(viewer).stream().collect(Collectors.toMap(Child::id, child -> child));
        var all = plans.all(viewer);
        var builder = new NeedRow(words, language, needWords, clock.instant(), today());
        var rows = new LinkedHashMap<Item, NativeTableRow>();
        byChild.forEach((child, items) -> {
            var first = true;
            for (var item : items) {
                var kid = first ? kid(kids, child, all) : Optional.<NeedRow.Kid>empty();
                var why = needWords.why(viewer, item, today());
                rows.put(
                        item,
                        item.left().isPresent()
                                ? builder.left(item, kid, why)
                                : builder.open(item, kid, why, step(item), usual(item), asideAllowed(item), this));
                first = false;
            }
        });
        return rows;
    }

    private Optional<NeedRow.Kid> kid(Map<ChildId, Child> kids, ChildId id, Map<ChildId, List<Plan>> all) {
        return Optional.ofNullable(kids.get(id)).map(child -> {
            var age = String.valueOf(child.ageOn(today()));
            var stages = childWords.stages(language, all.getOrDefault(id, List.of()), today());
            var about = stages.isEmpty() ? age : age + " · " + stages;
            return new NeedRow.Kid(child.fullName(), about);
        });
    }

    private NeedRow.Step step(Item item) {
        var folder = "staff/child/" + item.child();
        return switch (item.cause().rule()) {
            case SIGN -> new NeedRow.Step(say("caseload.step.SIGN"), folder + "/signs");
            case MISSED -> new NeedRow.Step(say("caseload.step.MISSED"), folder + "/family");
            case TASK -> new NeedRow.Step(say("caseload.step.TASK"), folder + "/tasks");
            case PAIN, CARE_TURN -> new NeedRow.Step(say("caseload.step.PROGRAM"), folder + "/program");
            case NO_LOG, PAIN_RISING, PAIN_OFTEN, STOPPED, TOO_HARD, FEW_DONE, MORE ->
                new NeedRow.Step(say("caseload.step.PROGRESS"), folder + "/program/how");
            case FIRST_FILL, PUMP_CONCERN -> new NeedRow.Step(say("caseload.step.PUMP"), folder + "/pump");
            case DEVICE_BEHIND -> new NeedRow.Step(say("caseload.step.DEVICE"), folder + "/device");
            case SECOND_CHECK ->
                new NeedRow.Step(say("caseload.step.SECOND_CHECK"), folder + SecondCheckWords.tab(item));
            case GENERATOR, DEVICE_WARNING -> new NeedRow.Step(say("caseload.step.STIMULATOR"), folder + "/stimulator");
            case CHECK -> new NeedRow.Step(say("caseload.step.CHECK"), folder + "/surveillance");
            case STAGE_WAITS, STAGE_NO_DAY, STAGE_LATE -> new NeedRow.Step(say("caseload.step.PATH"), folder + "/path");
            case STAGE_VISIT ->
                isToBook(item)
                        ? new NeedRow.Step(
                                say("caseload.step.VISIT"),
                                "staff/desk?row=book/" + item.child() + "/"
                                        + item.cause().subject())
                        : new NeedRow.Step(say("caseload.step.PATH"), folder + "/path");
            case REFILL ->
                gate.allows(viewer, Action.BOOK_VISIT, item.child())
                        ? new NeedRow.Step(say("caseload.step.BOOK"), "staff/desk?row=book/" + item.child() + "/refill")
                        : new NeedRow.Step(say("caseload.step.PUMP"), folder + "/pump");
        };
    }

    /** What is over is cleared up in the path, and so is everything by who books no visits. */
    private boolean isToBook(Item item) {
        return !item.cause().day().isBefore(today()) && gate.allows(viewer, Action.BOOK_VISIT, item.child());
    }

    private String usual(Item item) {
        return needWords.usual(viewer, item, needs.conduct(item).with());
    }

    private boolean asideAllowed(Item item) {
        return needs.conduct(item).asideDays() > 0;
    }

    @Override
    public void take(Item item) {
        act(item, () -> needs.take(viewer, item.id(), item.version()));
    }

    @Override
    public void see(Item item) {
        act(item, () -> needs.see(viewer, item.id(), item.version()));
    }

    @Override
    public void resume(Item item) {
        act(item, () -> needs.resume(viewer, item.id(), item.version()));
    }

    @Override
    public void setAside(Item item) {
        var tomorrow = today().plusDays(1);
        var last = today().plusDays(needs.conduct(item).asideDays());
        var bound = item.cause().rule() == Rule.REFILL && item.cause().day().isBefore(last)
                ? item.cause().day()
                : last;
        new NeedForms(words, language)
                .setAside(
                        about(item),
                        tomorrow,
                        bound,
                        (until, reason) -> actOrRefuse(
                                item, () -> needs.setAside(viewer, item.id(), until, reason, item.version())));
    }

    @Override
    public void close(Item item) {
        if (!needs.conduct(item).outcomeCloses()) {
            Told.couldNot(say("caseload.close.cause-stands." + item.cause().rule()));
            return;
        }
        new NeedForms(words, language)
                .close(
                        about(item),
                        (outcome, says) ->
                                actOrRefuse(item, () -> needs.close(viewer, item.id(), outcome, says, item.version())));
    }

    private String about(Item item) {
        var why = needWords.why(viewer, item, today());
        return children.get(viewer, item.child()).fullName() + " · " + why.title();
    }

    private void act(Item item, Runnable work) {
        try {
            actOrRefuse(item, work);
        } catch (Invalid invalid) {
            Told.couldNot(words.say(language, invalid.problems().get(0)));
        }
    }

    /** The row stays at hand, or the one after it when it left this list. */
    private void actOrRefuse(Item item, Runnable work) {
        var order = new ArrayList<>(needs.open(viewer));
        order.removeIf(other -> !show.shows(other, viewer));
        var at = order.stream().map(Item::id).toList().indexOf(item.id());
        var after = at >= 0 && at + 1 < order.size() ? order.get(at + 1).id() : item.id();
        try {
            work.run();
        } catch (Overtaken overtaken) {
            Told.couldNot(say("caseload.overtaken"));
        }
        var stays = needs.open(viewer).stream()
                .anyMatch(other -> other.id().equals(item.id()) && show.shows(other, viewer));
        draw(Optional.of(stays ? item.id() : after));
        TallyChanged.tell();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), settings.zone());
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
