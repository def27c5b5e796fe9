package org.hearthway.program.ui;

import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.KeyModifier;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.content.SignOff;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.ClinicValues;
import org.hearthway.path.Plans;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.ExerciseWords;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.ProgramPauses;
import org.hearthway.program.ProgramWords;
import org.hearthway.program.Programs;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.Programs.Version;
import org.hearthway.program.Progress;
import org.hearthway.program.StarterSets;
import org.hearthway.program.StarterSets.StarterSet;
import org.hearthway.words.Words;

/** A child's home program in the folder: the table that is written, what the family will see, and every version. */
@Route("staff/child/:child/program")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class ProgramView extends Div implements BeforeEnterObserver, HasDynamicTitle {

    private static final int LOOKED_BACK = 7;

    private final transient Programs programs;
    private final transient HomeWeek week;
    private final transient Progress progress;
    private final transient Plans plans;
    private final transient Accounts accounts;
    private final transient Households households;
    private final transient ChildRegister children;
    private final transient SignOff signOff;
    private final transient Gate gate;
    private final transient ClinicSettings settings;
    private final transient Clock clock;
    private final transient StarterSets starters;
    private final transient ProgramPauses pauses;
    private final transient FamilyTimes times;
    private final transient Viewer.Person viewer;
    private final transient Say say;
    private final Div page = Tags.div("hw-desk");
    private final Div below = new Div();
    private transient ChildId child = new ChildId(new UUID(0, 0));
    private transient Optional<Editor> editor = Optional.empty();
    private transient Optional<Resting> resting = Optional.empty();

    ProgramView(
            Programs programs,
            HomeWeek week,
            Progress progress,
            Plans plans,
            Accounts accounts,
            Households households,
            ChildRegister children,
            SignOff signOff,
            Gate gate,
            ClinicSettings settings,
            Clock clock,
            SignedIn signedIn,
            Words words,
            ProgramWords programWords,
            ExerciseWords exerciseWords,
            ExerciseLibrary library,
            ClinicValues values,
            StarterSets starters,
            ProgramPauses pauses,
            FamilyTimes times) {
        this.programs = programs;
        this.week = week;
        this.progress = progress;
        this.plans = plans;
        this.accounts = accounts;
        this.households = households;
        this.children = children;
        this.signOff = signOff;
        this.gate = gate;
        this.settings = settings;
        this.clock = clock;
        this.viewer = signedIn.require();
        this.starters = starters;
        this.pauses = pauses;
        this.times = times;
        this.say = new Say(words, programWords, exerciseWords, library, values, viewer.language());
        addClassName("hw-worksheet");
        add(page);
        Shortcuts.addShortcutListener(this, () -> editor.ifPresent(Editor::save), Key.ENTER, KeyModifier.CONTROL)
                .listenOn(this);
    }

    private KeyBar keys(boolean writing) {
        if (!writing) {
            return new KeyBar().remark(say.say("keys.written-down"));
        }
        return new KeyBar()
                .tell(say.say("keys.line"), "J", "K")
                .tell(say.say("keys.move"), "U", "D")
                .tell(say.say("keys.number"), say.say("key.enter"))
                .tell(say.say("keys.step"), "↑", "↓")
                .tell(say.say("keys.days"), "1…7")
                .tell(say.say("keys.swap"), "E", "H")
                .tell(say.say("keys.more"), "M")
                .tell(say.say("keys.out"), "X")
                .tell(say.say("keys.add"), "A")
                .tell(say.say("keys.begin"), "G")
                .tell(say.say("keys.note"), "N", "R")
                .tell(say.say("keys.peek"), "P", "V")
                .tell(say.say("keys.compare"), "C")
                .tell(say.say("keys.undo"), "Z")
                .tell(say.say("keys.save"), "S")
                .remark(say.say("keys.written-down"));
    }

    @Override
    public String getPageTitle() {
        return say.say("page");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var asked =
                event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.SEE_FOLDER, asked);
        if (!asked.equals(child) || page.getChildren().findAny().isEmpty()) {
            child = asked;
            open();
        }
        var parameters = event.getLocation().getQueryParameters();
        showBelow(parameters.getSingleParameter("version"), parameters.getSingleParameter("compare"));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), settings.zone());
    }

    private String address() {
        return "staff/child/" + child + "/program";
    }

    private void open() {
        page.removeAll();
        getChildren().filter(KeyBar.class::isInstance).toList().forEach(this::remove);
        var writes = gate.allows(viewer, Action.CHANGE_PROGRAM, child);
        add(keys(writes));
        page.add(Tags.div(
                "u-row u-end hw-screen-only",
                Tags.link("hw-button text u-short", address() + "/how", say.say("how-it-goes"))));
        proposals(writes);
        var latest = programs.latest(viewer, child);
        if (writes) {
            var kept = programs.keptDraft(viewer, child);
            var editing =
                    kept.map(draft -> Editing.of(latest, draft, today())).orElseGet(() -> Editing.of(latest, today()));
            var work = new Work();
            resting = Optional.of(new Resting(say, true, work));
            var known = times.latest(viewer, child).map(FamilyTimes.Version::times);
            var writing = new Editor(say, editing, lastDays(), languages(), shown(), rules(), known, about(), work);
            editor = Optional.of(writing);
            resting.ifPresent(page::add);
            page.add(writing, familyWeek(true), below);
            if (editing.isOvertaken()) {
                latest.ifPresent(writing::overtaken);
            }
        } else {
            editor = Optional.empty();
            page.add(new Resting(say, false, new Work()), readOnly(latest), familyWeek(false), below);
        }
    }

    private FamilyWeekPanel familyWeek(boolean writes) {
        return new FamilyWeekPanel(
                say,
                today(),
                settings.zone(),
                times.history(viewer, child),
                times.away(viewer, child),
                times.fit(viewer, child, today().plusDays(LOOKED_BACK)).or(() -> times.fit(viewer, child, today())),
                writes ? Optional.of("my/" + child + "/our-week") : Optional.empty());
    }

    /** Over the table; what the draft has taken up already is offered no more. */
    private void proposals(boolean writes) {
        var how = new HowSay(say.words(), say.program(), say.language());
        var drafted = writes
                ? programs.keptDraft(viewer, child)
                        .map(kept -> kept.draft().lines())
                        .orElse(List.of())
                : List.<org.hearthway.program.engine.ProgramLine>of();
        progress.proposed(viewer, child).stream()
                .filter(proposed -> drafted.stream()
                        .noneMatch(line -> line.exercise()
                                        .equals(proposed.then().exercise())
                                && line.prescription().equals(proposed.then().prescription())))
                .forEach(proposed -> page.add(
                        writes
                                ? new ProposalStrip(how, proposed, () -> {
                                    progress.takeUp(viewer, child, proposed);
                                    open();
                                    showBelow(Optional.empty(), Optional.empty());
                                })
                                : new ProposalStrip(how, proposed)));
    }

    private Div readOnly(Optional<Version> latest) {
        var box = Tags.div("", Tags.p("hw-quiet u-mb2", say.say("read-only")));
        latest.ifPresentOrElse(
                version -> box.add(versions().read(version.number())),
                () -> box.add(Tags.p("hw-quiet", say.say("versions.none"))));
        return box;
    }

    private About about() {
        var known = children.get(viewer, child);
        return new About(
                known.ageOn(today()),
                known.gmfcs(),
                gate.allows(viewer, Action.LIFT_PRECAUTION, child),
                gate.allows(viewer, Action.TRY_PICTURE));
    }

    private LastDays lastDays() {
        var first = today().minusDays(LOOKED_BACK);
        return new LastDays(
                week.days(viewer, child, first, LOOKED_BACK), week.entries(viewer, child, first, today().minusDays(1)));
    }

    /** The languages of the people who care for the child, as they read; both where nobody does yet. */
    private List<Language> languages() {
        var people = households.caregivers(viewer, child).stream()
                .map(Households.Caregiver::account)
                .toList();
        var spoken = accounts.byId(viewer, people).values().stream()
                .map(Account::language)
                .distinct()
                .sorted(Comparator.naturalOrder())
                .toList();
        return spoken.isEmpty() ? List.of(Language.values()) : spoken;
    }

    private Set<String> shown() {
        var items = say.library().all().stream().map(Exercise::item).toList();
        return signOff.shownAmong(items).stream().map(SignOff.Item::id).collect(Collectors.toSet());
    }

    private List<org.hearthway.path.engine.Plan.Care> rules() {
        return plans.precautions(viewer, child, today());
    }

    private Versions versions() {
        var all = programs.history(viewer, child);
        return new Versions(say, settings.zone(), address(), all, authors(all));
    }

    private Map<AccountId, Account> authors(List<Version> versions) {
        return accounts.byId(viewer, versions.stream().map(Version::author).collect(Collectors.toSet()));
    }

    private void showBelow(Optional<String> version, Optional<String> compare) {
        below.removeAll();
        if (compare.isPresent()) {
            var pair = Arrays.stream(compare.get().split("-"))
                    .map(ProgramView::number)
                    .toList();
            var later = pair.size() > 1 ? pair.get(1) : 0;
            below.add(versions().compare(pair.get(0), later, writing(), this::compare));
        } else {
            version.map(ProgramView::number)
                    .ifPresent(number -> below.add(versions().read(number)));
        }
        below.add(versions().list());
    }

    private static int number(String text) {
        return text.matches("\\d{1,6}") ? Integer.parseInt(text) : 0;
    }

    private List<org.hearthway.program.engine.ProgramLine> writing() {
        return editor.map(Editor::lines)
                .orElseGet(
                        () -> programs.latest(viewer, child).map(Version::lines).orElse(List.of()));
    }

    private void compare(int earlier, int later) {
        UI.getCurrent().navigate(address(), QueryParameters.of("compare", earlier + "-" + later));
    }

    /** What the editor asks of the services. */
    private final class Work implements Editor.Acts, Resting.Acts {

        @Override
        public List<Programs.Caution> cautions(Draft draft) {
            return programs.cautions(viewer, child, draft);
        }

        @Override
        public void keep(Draft draft, int started) {
            programs.keepDraft(viewer, child, draft, started);
        }

        @Override
        public void drop() {
            programs.dropDraft(viewer, child);
            open();
        }

        @Override
        public void save(Draft draft, int seen) {
            try {
                var saved = programs.save(viewer, child, draft, seen);
                Told.done(say.say("saved", saved.number()));
                open();
                UI.getCurrent().navigate(address(), QueryParameters.empty());
                showBelow(Optional.empty(), Optional.empty());
            } catch (Overtaken overtaken) {
                programs.latest(viewer, child)
                        .ifPresent(theirs -> editor.ifPresent(writing -> writing.overtaken(theirs)));
                showBelow(Optional.empty(), Optional.empty());
            }
        }

        @Override
        public void compare(int number) {
            ProgramView.this.compare(number, 0);
        }

        @Override
        public String author(Version version) {
            return Optional.ofNullable(authors(List.of(version)).get(version.author()))
                    .map(Account::name)
                    .orElseGet(() -> say.say("versions.somebody"));
        }

        @Override
        public Optional<FamilyTimes.Trial> tryOut(
                LocalDate first, List<org.hearthway.program.engine.ProgramLine> lines) {
            return times.tryOut(viewer, child, first, lines);
        }

        @Override
        public List<StarterSet> sets() {
            return starters.all();
        }

        @Override
        public Optional<Beginnings.Marked> marked() {
            return MarkedProgram.find()
                    .filter(marked -> !marked.child().equals(child))
                    .flatMap(this::read);
        }

        /** As it is now allowed to be seen; what the person may no longer see is as if it had never been marked. */
        private Optional<Beginnings.Marked> read(MarkedProgram marked) {
            if (!gate.allows(viewer, Action.SEE_FOLDER, marked.child())) {
                return Optional.empty();
            }
            return programs.history(viewer, marked.child()).stream()
                    .filter(version -> version.number() == marked.version())
                    .findFirst()
                    .map(version -> new Beginnings.Marked(
                            say.say(
                                    "begin.copy",
                                    children.get(viewer, marked.child()).fullName(),
                                    version.number()),
                            version.lines()));
        }

        @Override
        public void mark() {
            programs.latest(viewer, child).ifPresent(version -> {
                new MarkedProgram(child, version.number()).keep();
                Told.done(say.say("marked"));
            });
        }

        @Override
        public void rest() {
            resting.ifPresent(Resting::turn);
        }

        @Override
        public List<ProgramPauses.Pause> pauses() {
            return pauses.all(viewer, child);
        }

        @Override
        public void pause(ProgramPauses.Asked asked) {
            pauses.pause(viewer, child, asked);
        }

        @Override
        public void goOn(ProgramPauses.Pause pause, LocalDate first) {
            pauses.goOn(viewer, child, pause.number(), first);
        }

        @Override
        public LocalDate today() {
            return ProgramView.this.today();
        }
    }
}
