package org.hearthway.caseload.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.HasElement;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.AfterNavigationEvent;
import com.vaadin.flow.router.AfterNavigationObserver;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Layout;
import com.vaadin.flow.router.ParentLayout;
import com.vaadin.flow.router.RouterLayout;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthway.access.SignedIn;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Viewer;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Device;
import org.hearthway.child.Devices;
import org.hearthway.child.Merges;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.paper.EmergencySheets;
import org.hearthway.parts.Tags;
import org.hearthway.parts.TallyChanged;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.hearthway.shell.StaffLayout;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;
import org.hearthway.words.Words;
import org.jspecify.annotations.Nullable;

/**
 * The frame of a child's folder: who it is, where the child stands, the tabs. Opening a folder is written to the trail
 * once; going from tab to tab is the same opening.
 */
@Layout("staff/child")
@ParentLayout(StaffLayout.class)
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class FolderLayout extends Div implements RouterLayout, BeforeEnterObserver, AfterNavigationObserver {

    private static final List<String> TABS = List.of(
            "path",
            "choosing",
            "program",
            "pump",
            "stimulator",
            "medicines",
            "device",
            "equipment",
            "surveillance",
            "tasks",
            "signs",
            "family");

    /** Where an address names the tab. */
    private static final int TAB_AT = 3;

    private final transient ChildRegister children;
    private final transient Merges merges;
    private final transient Plans plans;
    private final transient Visits visits;
    private final transient Signs signs;
    private final transient EmergencySheets sheets;
    private final transient Devices devices;
    private final transient Gate gate;
    private final transient AuditTrail trail;
    private final transient ChildWords childWords;
    private final transient Words words;
    private final transient ClinicSettings settings;
    private final transient StatusSheet.Parts status;
    private final transient Clock clock;
    private final Viewer.Person viewer;
    private final Language language;
    private final Div head = new Div();
    private final Nav tabs = new Nav();
    private final Div page = new Div();
    private @Nullable ChildId opened;

    FolderLayout(
            ChildRegister children,
            Merges merges,
            Plans plans,
            Visits visits,
            Signs signs,
            EmergencySheets sheets,
            Devices devices,
            Gate gate,
            AuditTrail trail,
            ChildWords childWords,
            Words words,
            ClinicSettings settings,
            StatusSheet.Parts status,
            Clock clock,
            SignedIn signedIn) {
        this.children = children;
        this.merges = merges;
        this.plans = plans;
        this.visits = visits;
        this.signs = signs;
        this.sheets = sheets;
        this.devices = devices;
        this.gate = gate;
        this.trail = trail;
        this.childWords = childWords;
        this.words = words;
        this.settings = settings;
        this.status = status;
        this.clock = clock;
        this.viewer = signedIn.require();
        this.language = viewer.language();
        addClassName("hw-folder-frame");
        head.addClassName("hw-folder");
        tabs.addClassName("hw-tabs");
        tabs.getElement().setAttribute("aria-label", say("caseload.folder.tabs"));
        page.addClassName("hw-folder-page");
        add(head, tabs, page);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var child =
                event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        var goesOn = merges.goesOnAs(viewer, child);
        if (goesOn.isPresent()) {
            event.forwardTo(event.getLocation()
                    .getPath()
                    .replace(child.toString(), goesOn.get().toString()));
            return;
        }
        gate.require(viewer, Action.SEE_FOLDER, child);
        if (!child.equals(opened)) {
            trail.looked(viewer, child, "folder");
            opened = child;
        }
    }

    @Override
    public void showRouterLayoutContent(HasElement content) {
        page.getElement().removeAllChildren();
        page.getElement().appendChild(content.getElement());
    }

    /** What a tab changes shows in the head, too: it is drawn anew whenever a tab opens. */
    @Override
    public void afterNavigation(AfterNavigationEvent event) {
        var child = opened;
        if (child == null) {
            return;
        }
        drawHead(children.get(viewer, child));
        drawTabs(child, event.getLocation().getSegments());
    }

    @Override
    protected void onAttach(AttachEvent event) {
        var worked = ComponentUtil.addListener(event.getUI(), TallyChanged.class, changed -> {
            var child = opened;
            if (child != null) {
                drawHead(children.get(viewer, child));
            }
        });
        addDetachListener(gone -> {
            worked.remove();
            gone.unregisterListener();
        });
    }

    private void drawHead(Child child) {
        var today = LocalDate.ofInstant(clock.instant(), settings.zone());
        var onPaths = plans.plans(viewer, child.id()).stream()
                .map(Plans.ChildPlan::plan)
                .toList();
        head.removeAll();
        var initial =
                Tags.span("hw-initial", child.name().substring(0, child.name().offsetByCodePoints(0, 1)));
        initial.getElement().setAttribute("aria-hidden", "true");
        head.add(
                initial,
                Tags.h1(child.fullName()),
                Tags.span("hw-label line", say("caseload.children.age", child.ageOn(today))),
                facts(child, onPaths, today),
                emergency(child.id()),
                new StatusSheet(status, viewer, child.id(), child.name(), () -> drawHead(child)));
    }

    /** In an emergency nobody looks for a tab: one press, from wherever in the folder. */
    private Component emergency(ChildId child) {
        var button = Tags.button(
                "plain",
                say("caseload.emergency.sheet"),
                pressed -> pressed.getSource()
                        .getUI()
                        .ifPresent(ui -> ui.getPage()
                                .setLocation(sheets.open(viewer, child).path())));
        button.setId("emergency-sheet");
        return button;
    }

    private Component facts(Child child, List<Plan> onPaths, LocalDate today) {
        var facts = Tags.div("facts");
        facts.add(fact("caseload.folder.path", childWords.paths(language, onPaths)));
        var stages = childWords.stages(language, onPaths, today);
        if (!stages.isEmpty()) {
            facts.add(fact("caseload.folder.stage", stages));
        }
        var next = visits.upcoming(viewer, child.id()).stream().findFirst();
        facts.add(fact("caseload.folder.next", next.map(this::date).orElse(say("caseload.children.no-date"))));
        facts.add(fact(
                "caseload.folder.level",
                child.gmfcs().map(level -> say("caseload.gmfcs", level)).orElse(say("caseload.folder.no-level"))));
        return facts;
    }

    private String date(Visit visit) {
        return say(
                "caseload.folder.next." + visit.answer().name(),
                visit.start().toLocalDate(),
                visit.kind().name());
    }

    private Component fact(String key, String text) {
        var fact = new Span(say(key));
        fact.getElement().appendChild(new com.vaadin.flow.dom.Element("b").setText(text));
        return fact;
    }

    private void drawTabs(ChildId child, List<String> address) {
        // staff, child, which child, the tab; what lies below a tab belongs to it
        var here = address.get(Math.min(TAB_AT, address.size() - 1));
        var topics = plans.plans(viewer, child).isEmpty() ? Set.<Sign.Topic>of() : signs.topics(viewer, child);
        var stimulated = devices.of(viewer, child).stream()
                .anyMatch(device -> device.kind() == Device.Kind.STIMULATOR && device.isInPlace());
        var without = Map.of(
                "pump",
                !topics.contains(Sign.Topic.PUMP),
                "stimulator",
                !stimulated && !topics.contains(Sign.Topic.STIMULATOR));
        tabs.removeAll();
        var talk = gate.allows(viewer, Action.SEE_CHOOSING, child);
        TABS.stream().filter(tab -> talk || !tab.equals("choosing")).forEach(tab -> {
            var link = Tags.link("", "staff/child/" + child + "/" + tab, say("caseload.tab." + tab));
            if (tab.equals(here)) {
                Tags.open(link);
            }
            if (without.getOrDefault(tab, false)) {
                link.addClassName("none");
            }
            tabs.add(link);
        });
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
