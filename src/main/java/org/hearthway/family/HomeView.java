package org.hearthway.family;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import org.hearthway.parts.Tags;

/** The way in: leads to the day of the person's first child, or says that no child is there yet. */
@Route("my")
@PermitAll
class HomeView extends Div implements BeforeEnterObserver, HasDynamicTitle {

    private final transient Readers readers;
    private String title = "";

    HomeView(Readers readers) {
        this.readers = readers;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var viewer = readers.viewer();
        var mine = readers.mine(viewer);
        if (!mine.isEmpty()) {
            event.forwardTo("my/" + mine.get(0).id() + "/today");
            return;
        }
        title = readers.words(viewer.language(), "family.nobody");
        removeAll();
        add(Tags.h1(title), Tags.p("u-lead", readers.words(viewer.language(), "family.nobody.way-out")));
    }

    @Override
    public String getPageTitle() {
        return title;
    }
}
