package org.hearthway.access.ui;

import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import org.hearthway.access.SignedIn;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.NotAvailable;
import org.hearthway.child.ChildRegister;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** A child's family for an administrator, who enters what is known of the homes and opens no folder. */
@Route("staff/clinic/child/:child/family")
@RolesAllowed("ADMINISTRATOR")
class ClinicHomesView extends ClinicPage implements BeforeEnterObserver {

    private final transient HomesPanel.Parts parts;
    private final transient ChildRegister children;
    private final transient AuditTrail trail;

    ClinicHomesView(HomesPanel.Parts parts, ChildRegister children, AuditTrail trail, Words words, SignedIn signedIn) {
        super("children", words, signedIn);
        this.parts = parts;
        this.children = children;
        this.trail = trail;
        addClassName("hw-clinic-homes");
    }

    @Override
    KeyBar keys() {
        return new KeyBar();
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var child =
                event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        parts.gate().require(viewer(), Action.SEE_HOMES, child);
        trail.looked(viewer(), child, "homes");
        main.removeAll();
        main.add(
                Tags.div("hw-colh", Tags.h2("", children.get(viewer(), child).fullName())),
                new HomesPanel(parts, viewer(), child));
    }
}
