package org.hearthway.caseload.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;

/** A folder opens at the path. */
@Route("staff/child/:child")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class FolderStart extends Div implements BeforeEnterObserver {

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        event.getRouteParameters().get("child").ifPresent(child -> event.forwardTo("staff/child/" + child + "/path"));
    }
}
