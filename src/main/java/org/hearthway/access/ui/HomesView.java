package org.hearthway.access.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Viewer;
import org.hearthway.parts.Tags;

/** A child's family in the folder: the homes, the nights, who helps. */
@Route("staff/child/:child/family")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class HomesView extends Div implements BeforeEnterObserver, HasDynamicTitle {

    private final transient HomesPanel.Parts parts;
    private final transient Viewer.Person viewer;

    HomesView(HomesPanel.Parts parts, SignedIn signedIn) {
        this.parts = parts;
        this.viewer = signedIn.require();
        addClassName("hw-worksheet");
    }

    @Override
    public String getPageTitle() {
        return parts.words().say(viewer.language(), "access.homes.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var child =
                event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        parts.gate().require(viewer, Action.SEE_HOMES, child);
        removeAll();
        add(Tags.div("hw-desk", new HomesPanel(parts, viewer, child)));
    }
}
