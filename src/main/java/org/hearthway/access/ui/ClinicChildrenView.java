package org.hearthway.access.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.child.Child;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;
import org.jspecify.annotations.Nullable;

/** The clinic's children: entering one, correcting what was entered, and who cares for whom. */
@Route("staff/clinic/children")
@RolesAllowed("ADMINISTRATOR")
class ClinicChildrenView extends ClinicPage implements BeforeEnterObserver {

    private static final String PLACE = "staff/clinic/children";

    private final transient ChildRegister register;
    private final transient Households households;
    private final transient Accounts accounts;
    private final Div alike = Tags.div("");
    private @Nullable ChildId chosen;
    private long seen;

    ClinicChildrenView(
            ChildRegister register, Households households, Accounts accounts, Words words, SignedIn signedIn) {
        super("children", words, signedIn);
        this.register = register;
        this.households = households;
        this.accounts = accounts;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        chosen = event.getLocation()
                .getQueryParameters()
                .getSingleParameter("child")
                .flatMap(ChildId::parse)
                .orElse(null);
        draw();
    }

    private void draw() {
        list();
        side.removeAll();
        if (chosen == null) {
            alike.removeAll();
            side.add(new ChildForm(words, language)
                    .draw(say("access.child.new"), say("access.child.enter"), this::enter, alike));
            return;
        }
        var child = register.get(viewer(), chosen);
        seen = child.version();
        side.add(
                new ChildForm(words, language)
                        .with(child.data())
                        .draw(child.fullName(), say("access.child.save"), data -> change(child.id(), data)),
                new CaregiversSheet(households, accounts, words, child.id(), this::draw).draw(viewer()),
                Tags.link(
                        "hw-button plain wide",
                        "staff/clinic/child/" + child.id() + "/family",
                        say("access.homes.open")),
                Tags.link(
                        "hw-button plain wide",
                        "staff/clinic/child/" + child.id() + "/merge",
                        say("access.merge.open")),
                Tags.link("hw-button text", PLACE, say("access.child.another")));
    }

    /** What looks like a child who is here already is shown first; entering it all the same is a press of its own. */
    private void enter(ChildData data) {
        var known = register.alike(viewer(), data);
        alike.removeAll();
        if (known.isEmpty()) {
            enterAsNew(data);
            return;
        }
        alike.add(new AlikeSheet(words, language).draw(known, PLACE, () -> enterAsNew(data)));
    }

    private void enterAsNew(ChildData data) {
        var id = register.enter(viewer(), data);
        Told.done(say("access.child.entered", data.names().used()));
        UI.getCurrent().navigate(PLACE, QueryParameters.of("child", id.toString()));
    }

    /** What somebody else saved in between is told; the typed stays, and saving again is then knowingly. */
    private void change(ChildId id, ChildData data) {
        try {
            register.change(viewer(), id, data, seen);
            Told.done(say("access.child.saved"));
            draw();
        } catch (Overtaken overtaken) {
            var now = register.get(viewer(), id);
            seen = now.version();
            Told.couldNot(say(
                    "access.child.overtaken",
                    now.fullName(),
                    words.dateWithYear(language, now.data().birthDate()),
                    now.gmfcs().map(String::valueOf).orElse(say("access.child.not-recorded"))));
        }
    }

    private void list() {
        main.removeAll();
        var children = register.all(viewer());
        if (children.isEmpty()) {
            main.add(Tags.div("hw-sheet hw-empty", Tags.p("hw-quiet", say("access.children.none"))));
            return;
        }
        var table =
                table(say("access.clinic.children"), "access.children.", "name", "birth-date", "gmfcs", "caregivers");
        var viewer = viewer();
        for (var child : children) {
            table.getBody()
                    .add(row(child, households.caregivers(viewer, child.id()).size()));
        }
        main.add(new Div(table));
    }

    private NativeTableRow row(Child child, int caregivers) {
        var row = Keys.row(
                new NativeTableRow(
                        cell(Keys.press(Tags.link("kidn", PLACE + "?child=" + child.id(), child.fullName()), "enter")),
                        cell(Tags.span(
                                "hw-num",
                                words.dateWithYear(language, child.data().birthDate()))),
                        cell(child.gmfcs().map(String::valueOf).orElse(say("access.child.not-recorded"))),
                        cell(say("access.children.count", caregivers))),
                child.id().toString());
        if (child.id().equals(chosen)) {
            row.addClassName("on");
        }
        return row;
    }
}
