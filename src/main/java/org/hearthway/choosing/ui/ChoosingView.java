package org.hearthway.choosing.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.Circle;
import org.hearthway.access.SignedIn;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.choosing.Answer;
import org.hearthway.choosing.Choosing;
import org.hearthway.choosing.Decision;
import org.hearthway.choosing.FactsEntry;
import org.hearthway.choosing.Talk;
import org.hearthway.choosing.engine.Mark;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Icon;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.parts.TallyChanged;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** Choosing together: the facts once, what they say about each path, the pages to take along, and what was decided. */
@Route("staff/child/:child/choosing")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE"})
class ChoosingView extends Div implements BeforeEnterObserver, HasDynamicTitle {

    private final transient Choosing choosing;
    private final transient Accounts accounts;
    private final transient Circle circle;
    private final transient Gate gate;
    private final transient ClinicSettings clinic;
    private final transient Clock clock;
    private final transient Telling say;
    private final Viewer.Person viewer;
    private final Div head = new Div();
    private final Div facts = Tags.div("hw-choice-facts");
    private final Div jumps = Tags.div("hw-choice-jumps");
    private final Div paths = Tags.div("hw-choice-paths");
    private final Div decision = Tags.div("hw-choice-paths");
    private final Div history = Tags.div("hw-choice-paths");
    private transient ChildId child = new ChildId(new UUID(0, 0));

    ChoosingView(
            Choosing choosing,
            Accounts accounts,
            Circle circle,
            Gate gate,
            Words words,
            ClinicSettings clinic,
            Clock clock,
            SignedIn signedIn) {
        this.choosing = choosing;
        this.accounts = accounts;
        this.circle = circle;
        this.gate = gate;
        this.clinic = clinic;
        this.clock = clock;
        this.viewer = signedIn.require();
        this.say = Telling.of(words, viewer.language(), choosing.facts());
        addClassName("hw-worksheet");
        add(
                Tags.div("hw-desk", head, Tags.div("hw-choosing", facts, Tags.div("", paths, decision, history))),
                new KeyBar()
                        .tell(say.say("choosing.keys.save"), "S")
                        .tell(say.say("choosing.keys.decide"), "D")
                        .remark(say.say("choosing.written-down")));
    }

    @Override
    public String getPageTitle() {
        return say.say("choosing.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        child = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.SEE_CHOOSING, child);
        drawHead();
        draw();
        drawDecisions();
    }

    private void drawHead() {
        head.removeAll();
        var legend = Tags.div("hw-choice-legend");
        for (var mark : Mark.values()) {
            legend.add(PathSheet.mark(say, mark));
        }
        var sheets = Tags.div("hw-choice-sheets");
        sheets.add(paper("team", viewer.language(), say.say("choosing.sheet.team")));
        familyLanguages()
                .forEach(language ->
                        sheets.add(paper("family", language, say.say("choosing.sheet.family." + language.tag()))));
        if (gate.allows(viewer, Action.CHANGE_PATH, child)) {
            var write = Tags.button("plain", say.say("choosing.decide"), pressed -> openForm());
            write.setId("open-decision");
            sheets.add(Keys.press(write, "d"));
        }
        head.add(
                Tags.div("hw-choice-head", Tags.h2("u-xl", say.say("choosing.title")), sheets),
                Tags.p("hw-choice-who", say.say("choosing.who-decides")),
                Tags.p("hw-sub", say.say("choosing.hint")),
                legend,
                jumps);
    }

    /** The languages that the homes read come first. */
    private List<Language> familyLanguages() {
        var languages = new LinkedHashSet<Language>();
        circle.members(viewer, child).forEach(member -> member.language().ifPresent(languages::add));
        languages.addAll(List.of(Language.values()));
        return List.copyOf(languages);
    }

    private Anchor paper(String which, Language language, String words) {
        var link = new Anchor("staff/child/" + child + "/choosing/" + which + "?lang=" + language.tag(), "");
        link.addClassNames("hw-button", "plain");
        link.add(Icon.PRINT.draw("sm"), Tags.span("", words));
        link.setTarget("_blank");
        link.setRouterIgnore(true);
        return link;
    }

    private void draw() {
        drawHistory();
        var talk = choosing.talk(viewer, child);
        drawPaths(talk);
        facts.removeAll();
        facts.add(new FactsForm(
                say,
                choosing.facts(),
                talk,
                gate.allows(viewer, Action.ENTER_FACTS, child),
                since(talk),
                new FactsForm.Acts() {
                    @Override
                    public void look(Map<String, Set<String>> choices) {
                        drawPaths(choosing.talkIf(viewer, child, choices));
                    }

                    @Override
                    public void save(Map<String, Answer.Data> entered) {
                        saveFacts(entered, talk.version());
                    }
                }));
    }

    private Function<Answer, String> since(Talk talk) {
        var people = accounts.byId(
                viewer, talk.answers().values().stream().map(Answer::by).toList());
        return answer -> since(people, answer.at(), answer.by());
    }

    private String since(Map<AccountId, Account> people, Instant at, AccountId by) {
        return say.say("choosing.since", say.day(LocalDate.ofInstant(at, clinic.zone())), name(people, by));
    }

    private void drawHistory() {
        history.removeAll();
        var entries = choosing.entries(viewer, child);
        if (!entries.isEmpty()) {
            var people =
                    accounts.byId(viewer, entries.stream().map(FactsEntry::by).toList());
            history.add(new FactsHistory(say, entries, entry -> since(people, entry.at(), entry.by())));
        }
    }

    private String name(Map<AccountId, Account> people, AccountId by) {
        var account = people.get(by);
        return account == null ? say.say("choosing.somebody") : account.name();
    }

    private void drawPaths(Talk talk) {
        paths.removeAll();
        jumps.removeAll();
        jumps.add(Tags.span("hw-sub", say.say("choosing.jump")));
        for (var path : talk.paths()) {
            var sheet = new PathSheet(say, path);
            paths.add(sheet);
            jumps.add(Tags.button("text", say.in(path.guide().name()), pressed -> sheet.scrollIntoView()));
        }
    }

    private void saveFacts(Map<String, Answer.Data> entered, long seen) {
        try {
            choosing.enter(viewer, child, entered, seen);
            Told.done(say.say("choosing.facts.saved"));
            draw();
        } catch (Overtaken overtaken) {
            // the form keeps what was typed
            Told.couldNot(say.say("choosing.facts.overtaken"));
        }
    }

    private void drawDecisions() {
        decision.removeAll();
        var all = choosing.decisions(viewer, child);
        if (!all.isEmpty()) {
            var people = accounts.byId(viewer, all.stream().map(Decision::by).toList());
            decision.add(new DecisionHistory(say, all, by -> name(people, by)));
        }
    }

    private void openForm() {
        var seen = choosing.decisions(viewer, child).stream()
                .mapToLong(Decision::number)
                .max()
                .orElse(0);
        drawDecisions();
        var form = new DecisionForm(say, choosing.ways(), today(), new DecisionForm.Acts() {
            @Override
            public void decide(Decision.Data data) {
                write(data, seen);
            }

            @Override
            public void leave() {
                drawDecisions();
            }
        });
        decision.addComponentAsFirst(form);
        form.scrollIntoView();
    }

    private void write(Decision.Data data, long seen) {
        try {
            choosing.decide(viewer, child, data, seen);
            Told.done(say.say("choosing.decided.done"));
            drawDecisions();
            TallyChanged.tell();
        } catch (Overtaken overtaken) {
            Told.couldNot(say.say("choosing.decide.overtaken"));
        }
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }
}
