package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Aside;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.dom.Element;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.Exercise;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.Programs.Caution;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.Programs.Version;
import org.hearthway.program.StarterSets.StarterSet;
import org.hearthway.program.engine.Adherence;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.ProgramRules;
import org.hearthway.program.engine.UsualDose;
import org.hearthway.program.engine.UsualRules;

/** Where a program is written: the table, and beside it the week's load, what the family will see, reason and save. */
final class Editor extends Div implements ProgramTable.Acts, Collision.Acts, Beginnings.Acts {

    /** What the editor asks of its page. */
    interface Acts {
        /** The rules of care that lines of the draft meet. */
        List<Caution> cautions(Draft draft);

        /** Keeps what is typed. */
        void keep(Draft draft, int started);

        /** Lets all of it go and begins with the newest version. */
        void drop();

        /** Saves, or comes back with {@link #overtaken}; refuses with {@link Invalid}. */
        void save(Draft draft, int seen);

        /** How the first week of these lines would lie. */
        Optional<FamilyTimes.Trial> tryOut(LocalDate first, List<ProgramLine> lines);

        /** Beginnings of a program that the clinic holds. */
        List<StarterSet> sets();

        /** The program of another child that was marked for copying. */
        Optional<Beginnings.Marked> marked();

        /** Marks this child's newest version for copying. */
        void mark();

        /** Opens or closes what lets the whole program rest. */
        void rest();

        /** Shows a version beside what is written. */
        void compare(int number);

        /** Who saved a version. */
        String author(Version version);

        LocalDate today();
    }

    private final transient Say say;
    private final transient Editing editing;
    private final transient Acts acts;
    private final transient Set<String> shown;
    private final transient Map<String, Boolean> sided;
    private final transient Map<String, UsualDose> usual;
    private final transient About about;
    private final Collision collision;
    private final ProgramTable table;
    private final WeekLoad load;
    private final MuscleLoad muscles;
    private final FamilyPeek peek;
    private final Div head = Tags.div("hw-colh");
    private final Div beginnings = new Div();
    private final DayField effective;
    private final TextArea toFamily = new TextArea();
    private final TextField reason = new TextField();
    private final Span changes = Tags.span("hw-sub", "");
    private final NativeButton save;

    Editor(
            Say say,
            Editing editing,
            LastDays last,
            List<Language> languages,
            Set<String> shown,
            List<Plan.Care> rules,
            Optional<FamilyTimes.Times> times,
            About about,
            Acts acts) {
        this.say = say;
        this.editing = editing;
        this.about = about;
        this.acts = acts;
        this.shown = shown;
        this.sided = new HashMap<>();
        say.library().all().forEach(exercise -> sided.put(exercise.id(), exercise.sided()));
        // what is gone from the library goes on where it stood before
        editing.baseLines().stream()
                .flatMap(line -> say.library().find(line.exercise()).stream())
                .forEach(exercise -> sided.put(exercise.id(), exercise.sided()));
        this.usual = say.library().all().stream()
                .collect(Collectors.toMap(Exercise::id, exercise -> exercise.usualFor(about.years())));
        var pace = say.library().pace();
        this.collision = new Collision(say, this);
        this.collision.setVisible(false);
        this.load = new WeekLoad(say, pace, times);
        this.muscles = new MuscleLoad(say);
        this.peek = new FamilyPeek(say, pace, languages);
        this.table = new ProgramTable(say, editing, this, last, about);
        this.effective = new DayField(say.say("effective"), say.words(), say.language());
        this.save = Keys.press(Tags.button("main", "", pressed -> save()), "s");
        var section = Tags.section("", say.say("page"), head, collision, table, whole(), beginnings);
        var aside = new Aside(form(), load, adherence(last.adherence()), muscles, peek);
        aside.getElement().setAttribute("aria-label", say.say("aside"));
        banner(rules).ifPresent(this::add);
        add(Tags.div("hw-editor", section, aside));
        follow();
    }

    private Optional<Component> banner(List<Plan.Care> rules) {
        var holding = rules.stream().filter(care -> care.rule().forbids()).toList();
        if (holding.isEmpty()) {
            return Optional.empty();
        }
        var tags = holding.stream().map(care -> care.rule().tag()).collect(Collectors.toSet());
        var locked = say.library().all().stream()
                .filter(e -> e.tags().stream().anyMatch(tags::contains))
                .count();
        var says = new Div();
        holding.stream()
                .collect(Collectors.groupingBy(Plan.Care::until, TreeMap::new, Collectors.toList()))
                .forEach((until, rulesUntil) -> says.add(Tags.p(
                        "",
                        say.say(
                                "banner.until",
                                say.date(until),
                                rulesUntil.stream().map(say::movement).collect(Collectors.joining(" · "))))));
        says.add(Tags.p("hw-b", say.say("banner.locked", locked)));
        holding.stream()
                .map(care -> care.rule().source())
                .distinct()
                .forEach(source -> says.add(Tags.p("hw-sub", say.say("banner.source", source))));
        holding.stream()
                .filter(care -> say.own(care).isPresent())
                .collect(Collectors.groupingBy(care -> say.own(care).orElseThrow(), TreeMap::new, Collectors.toList()))
                .forEach((own, rulesOfOurs) -> says.add(Tags.p(
                        "hw-sub",
                        say.say(
                                "banner.own",
                                rulesOfOurs.stream().map(say::movement).collect(Collectors.joining(" · ")),
                                own))));
        return Optional.of(Tags.div("hw-banner u-mb2", Icon.INFO.draw(), says));
    }

    private Component adherence(Adherence adherence) {
        var box = Tags.div("hw-done");
        box.add(Tags.span(
                "hw-b",
                adherence.percent().isPresent()
                        ? say.say("adherence", Math.round(adherence.percent().getAsDouble()))
                        : say.say("adherence.none")));
        if (adherence.planned() > 0) {
            box.add(Tags.span(
                    "hw-sub",
                    say.say(
                            "adherence.parts",
                            adherence.done(),
                            adherence.planned(),
                            adherence.some(),
                            adherence.excused(),
                            adherence.notReported())));
        }
        if (adherence.extra() > 0) {
            box.add(Tags.span("hw-sub", say.say("adherence.extra", adherence.extra())));
        }
        return box;
    }

    private Component form() {
        effective.setValue(editing.effective());
        effective.setWidthFull();
        effective.addValueChangeListener(change -> {
            if (change.getValue() != null) {
                editing.effective(change.getValue());
                changed();
            }
        });
        reason.setWidthFull();
        reason.setValue(editing.reason());
        reason.setValueChangeMode(ValueChangeMode.LAZY);
        reason.addValueChangeListener(change -> {
            editing.reason(change.getValue());
            changed();
        });
        toFamily.setLabel(say.say("toFamily"));
        toFamily.setHelperText(say.say("toFamily.hint", ProgramRules.TO_FAMILY));
        toFamily.setWidthFull();
        toFamily.setValue(editing.toFamily());
        toFamily.setValueChangeMode(ValueChangeMode.LAZY);
        toFamily.addValueChangeListener(change -> {
            editing.toFamily(change.getValue());
            changed();
        });
        reason.setHelperText(say.say("reason.hint"));
        return Tags.div(
                "hw-fields hw-own-fields",
                Keys.press(toFamily, "n"),
                Keys.press(reason, "r"),
                effective,
                Tags.div("hw-save", changes, save));
    }

    List<ProgramLine> lines() {
        return editing.programLines();
    }

    @Override
    public void changed() {
        if (editing.changed()) {
            acts.keep(editing.draft(), editing.started());
        }
        follow();
    }

    private void follow() {
        var cautions = acts.cautions(editing.draft());
        editing.dropIdleLeaves(cautions);
        var lines = editing.programLines();
        var problems = new ArrayList<>(editing.unheld());
        problems.addAll(ProgramRules.check(lines, sided));
        // what cannot be is told first; whether it is usual is asked of what can be
        UsualRules.check(lines, editing.baseLines(), usual).stream()
                .filter(asked ->
                        problems.stream().noneMatch(wrong -> line(wrong).equals(line(asked))))
                .toList()
                .forEach(problems::add);
        table.follow(problems, cautions, shown);
        var sound = editing.soundLines(problems);
        load.follow(sound, editing.effective());
        muscles.follow(editing.baseLines(), sound, editing.effective());
        peek.follow(
                editing.baseLines(),
                sound,
                editing.effective(),
                editing.toFamily(),
                acts.tryOut(editing.effective(), sound),
                shown);
        var count = editing.diff().changes().size();
        changes.setText(say.say("changes", count));
        reason.setLabel(say.say("reason", editing.number() + 1));
        save.removeAll();
        save.getElement().setText("");
        save.add(new Span(say.say("save", editing.number() + 1)));
        var key = new Element("kbd").setText("S");
        key.setAttribute("class", "in");
        save.getElement().appendChild(key);
        drawHead(count);
    }

    private static String line(Problem problem) {
        return problem.field().replaceAll("].*", "]");
    }

    private void drawHead(int count) {
        head.removeAll();
        var base = editing.base();
        head.add(Tags.h2(
                "",
                count == 0 && base.isPresent()
                        ? say.say("title", editing.number())
                        : say.say("title", editing.number() + 1)));
        if (count > 0 || base.isEmpty()) {
            head.add(Tags.span("hw-label ember", say.say("draft")));
        }
        head.add(Tags.span(
                "hw-sub",
                base.map(version -> say.say(
                                version.effective().isAfter(acts.today()) ? "begins" : "live",
                                version.number(),
                                say.date(version.effective())))
                        .orElseGet(() -> say.say("first"))));
        head.add(Tags.span("grow", ""));
        if (editing.canUndo()) {
            head.add(Keys.press(Tags.button("text", Icon.UNDO, say.say("undo"), pressed -> undo()), "z"));
        }
        if (count > 0) {
            head.add(Tags.button("text", say.say("drop"), pressed -> acts.drop()));
        }
        base.ifPresent(version -> head.add(Keys.press(
                Tags.button("plain", say.say("compare", version.number()), pressed -> acts.compare(version.number())),
                "c")));
    }

    /** What is done with the program as a whole. */
    private Component whole() {
        var row = Tags.div(
                "hw-leaves hw-whole", Keys.press(Tags.bare("hw-word", say.say("begin"), pressed -> begin()), "g"));
        if (editing.base().isPresent()) {
            row.add(
                    Tags.bare("hw-word", say.say("mark"), pressed -> acts.mark()),
                    Tags.bare("hw-word", say.say("rest.title"), pressed -> acts.rest()));
        }
        if (about.mayTry()) {
            row.add(Tags.link("hw-word", "staff/clinic/figures", say.say("pictures")));
        }
        return row;
    }

    private void begin() {
        if (beginnings.getChildren().findAny().isPresent()) {
            close();
        } else {
            var panel = new Beginnings(say, about, this);
            beginnings.add(panel);
            panel.getElement().setAttribute("tabindex", "-1");
            Keys.focus(panel);
        }
    }

    @Override
    public void close() {
        beginnings.removeAll();
        Keys.back(table);
    }

    @Override
    public List<StarterSet> sets() {
        return acts.sets();
    }

    @Override
    public Optional<Beginnings.Marked> marked() {
        return acts.marked();
    }

    @Override
    public LocalDate effective() {
        return editing.effective();
    }

    @Override
    public void addAll(List<ProgramLine> lines) {
        var added = editing.addMissing(lines);
        table.draw();
        changed();
        close();
        Told.done(say.say("begin.added", added));
    }

    private void undo() {
        editing.undo();
        acts.keep(editing.draft(), editing.started());
        effective.setValue(editing.effective());
        reason.setValue(editing.reason());
        toFamily.setValue(editing.toFamily());
        table.drawAgain();
        redrawCollision();
        follow();
    }

    void save() {
        try {
            Invalid.ifAny(editing.unheld());
            acts.save(editing.toSave(), editing.number());
        } catch (Invalid invalid) {
            var elsewhere = invalid.problems().stream()
                    .filter(p -> !p.field().startsWith("lines["))
                    .toList();
            Told.problems(
                    elsewhere,
                    Map.of("effective", effective, "reason", reason, "toFamily", toFamily),
                    say.words(),
                    say.language());
            if (elsewhere.size() < invalid.problems().size()) {
                Told.couldNot(say.say("not-saved"));
            }
            follow();
        }
    }

    /** Somebody else saved: shows both, keeps all that was typed. */
    void overtaken(Version theirs) {
        editing.overtakenBy(theirs);
        collision.setVisible(true);
        redrawCollision();
        follow();
        collision.scrollIntoView();
    }

    private void redrawCollision() {
        if (editing.isOvertaken()) {
            editing.base()
                    .ifPresent(theirs -> collision.show(
                            acts.author(theirs), theirs.number(), theirs.reason(), theirs.lines(), lines()));
        }
    }

    @Override
    public void takeOver(Optional<Integer> mine, Optional<ProgramLine> theirs) {
        var lines = editing.lines();
        if (mine.isPresent() && theirs.isPresent()) {
            lines.set(mine.get(), new EditedLine(theirs.get()));
        } else if (mine.isPresent()) {
            lines.remove(mine.get().intValue());
        } else {
            theirs.ifPresent(editing::add);
        }
        table.drawAgain();
        changed();
        redrawCollision();
    }

    @Override
    public void takeAll() {
        editing.lines().clear();
        editing.baseLines().forEach(editing::add);
        table.drawAgain();
        changed();
        redrawCollision();
    }

    @Override
    public List<List<Plan.Care>> care(List<ProgramLine> lines) {
        var found = acts.cautions(new Draft(editing.effective(), lines, ""));
        var care = new ArrayList<List<Plan.Care>>();
        IntStream.range(0, lines.size())
                .forEach(i -> care.add(found.stream()
                        .filter(c -> c.line() == i)
                        .map(Caution::care)
                        .toList()));
        return care;
    }

    @Override
    public ProgramLine usual(Exercise exercise) {
        return EditedLine.usual(exercise, editing.effective(), about.years());
    }

    @Override
    public void add(ProgramLine line) {
        table.add(line);
    }
}
