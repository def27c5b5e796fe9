package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.ClinicTabs;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.TallyChanged;
import org.hearthway.parts.Told;
import org.hearthway.path.ClinicValues;
import org.hearthway.path.ClinicValues.Change;
import org.hearthway.path.ClinicValues.LeftOut;
import org.hearthway.path.ClinicValues.PathOfClinic;
import org.hearthway.path.ClinicValues.Preview;
import org.hearthway.path.ClinicValues.Rule;
import org.hearthway.path.ClinicValues.StageValues;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.path.internal.GapWords;
import org.hearthway.path.internal.ValueWords;
import org.hearthway.words.Words;

/** The clinic's own values in the paths: what differs, every value by stage with its source, and changing them. */
@Route("staff/clinic/paths")
@RolesAllowed("ADMINISTRATOR")
class ClinicValuesView extends Div implements BeforeEnterObserver, HasDynamicTitle, ValuesForm.Acts {

    private static final String PLACE = "staff/clinic/paths";
    private static final String PATH = "path";

    private final transient ClinicValues values;
    private final transient ChildRegister children;
    private final transient Accounts accounts;
    private final transient SignedIn signedIn;
    private final transient Gate gate;
    private final transient ValueSay say;
    private final Nav paths = new Nav();
    private final Div main = Tags.div("hw-clinic-list");
    private final Div side = Tags.div("hw-clinic-side");
    private transient Map<ChildId, String> names = Map.of();
    private String chosen = "";
    private long seen;

    ClinicValuesView(
            ClinicValues values,
            ChildRegister children,
            Accounts accounts,
            SignedIn signedIn,
            Gate gate,
            ClinicSettings settings,
            Words words,
            ValueWords valueWords,
            GapWords gaps) {
        this.values = values;
        this.children = children;
        this.accounts = accounts;
        this.signedIn = signedIn;
        this.gate = gate;
        var language = signedIn.require().language();
        this.say = new ValueSay(new ValueSay.Parts(words, valueWords, gaps, language, settings.zone()));
        addClassName("hw-worksheet");
        paths.addClassName("hw-value-paths");
        paths.getElement().setAttribute("aria-label", say.say("path.values.paths"));
        add(
                Tags.div(
                        "hw-main hw-clinic hw-clinic-values",
                        new ClinicTabs(words, language, "paths"),
                        Tags.div(
                                "hw-title",
                                Tags.h1(getPageTitle()),
                                Tags.span("hw-quiet", say.say("path.values.says"))),
                        paths,
                        Tags.div("hw-clinic-columns", main, side)),
                new KeyBar().tell(say.say("path.keys.leave"), say.say("parts.key.escape")));
    }

    @Override
    public String getPageTitle() {
        return say.say("access.clinic.paths");
    }

    /** Asked anew for each act, so that a lost role counts at once. */
    private Viewer.Person viewer() {
        return signedIn.require();
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        chosen = event.getLocation()
                .getQueryParameters()
                .getSingleParameter(PATH)
                .orElse("");
        draw();
    }

    private void draw() {
        side.removeAll();
        side.add(Tags.div(
                "hw-sheet hw-side-form",
                Tags.h2("", say.say("path.values.pick")),
                Tags.p("hw-quiet", say.say("path.values.pick.hint"))));
        drawPath();
    }

    private void drawPath() {
        var all = values.all(viewer());
        var path = all.stream()
                .filter(each -> each.pathway().equals(chosen))
                .findFirst()
                .orElse(all.get(0));
        chosen = path.pathway();
        seen = path.version();
        say.knows(accounts.byId(
                viewer(),
                path.changes().stream().flatMap(change -> change.by().stream()).collect(Collectors.toSet())));
        paths.removeAll();
        all.forEach(each -> paths.add(link(each)));
        main.removeAll();
        main.add(
                new OwnValueSheet(say, path, this::change, this::drop),
                new StageValueList(say, path, this::change),
                new ValueChangeList(say, path, this::takeBack));
    }

    private Component link(PathOfClinic path) {
        var link = Tags.link(
                "hw-value-path",
                PLACE + "?" + PATH + "=" + path.pathway(),
                Tags.span("", say.in(path.name())),
                Tags.span(
                        path.ownValues() == 0 ? "hw-sub" : "hw-label river",
                        say.say("path.values.count", path.ownValues())));
        if (!path.leftOut().isEmpty()) {
            link.add(Tags.span(
                    "hw-label ember",
                    say.say("path.values.left.count", path.leftOut().size())));
        }
        if (path.pathway().equals(chosen)) {
            link.getElement().setAttribute("aria-current", "page");
        }
        return link;
    }

    private ValuesForm form() {
        return side.getChildren()
                .filter(ValuesForm.class::isInstance)
                .map(ValuesForm.class::cast)
                .findFirst()
                .orElseGet(() -> {
                    var form = new ValuesForm(say, this);
                    side.removeAll();
                    side.add(form);
                    form.scrollIntoView();
                    return form;
                });
    }

    private void change(StageValues stage, Rule rule) {
        form().take(stage, rule);
    }

    private void drop(LeftOut left) {
        form().drop(left);
    }

    private void takeBack(Change change) {
        try {
            var preview = values.previewUndo(viewer(), chosen, change.number());
            var form = new ValuesBackForm(say, change, moved(preview), reason -> undo(change, reason), this::draw);
            side.removeAll();
            side.add(form);
            form.scrollIntoView();
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), Map.of(), say.words(), say.language());
        }
    }

    private void undo(Change change, String reason) {
        attempt(() -> values.undo(viewer(), chosen, change.number(), reason, seen));
    }

    @Override
    public Preview preview(Map<ValuePlace, Optional<Amount>> wishes) {
        return values.preview(viewer(), chosen, wishes);
    }

    @Override
    public void save(Map<ValuePlace, Optional<Amount>> wishes, String reason) {
        attempt(() -> values.apply(viewer(), chosen, wishes, reason, seen));
    }

    /** Does it, or says that somebody else was first: what was typed stays, and the page shows how it is now. */
    private void attempt(Runnable work) {
        try {
            work.run();
            Told.done(say.say("path.values.done"));
            TallyChanged.tell();
            draw();
        } catch (Overtaken overtaken) {
            Told.couldNot(say.say("path.values.overtaken"));
            drawPath();
            side.getChildren()
                    .filter(ValuesForm.class::isInstance)
                    .map(ValuesForm.class::cast)
                    .forEach(ValuesForm::show);
        }
    }

    @Override
    public MovedChildren moved(Preview preview) {
        if (names.isEmpty()) {
            names = children.all(viewer()).stream().collect(Collectors.toMap(Child::id, Child::fullName));
        }
        return new MovedChildren(
                say,
                preview,
                child -> names.getOrDefault(child, say.say("path.values.unnamed")),
                child -> gate.allows(viewer(), Action.SEE_FOLDER, child));
    }

    @Override
    public void leave() {
        draw();
    }
}
