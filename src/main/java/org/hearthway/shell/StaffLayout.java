package org.hearthway.shell;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.HasElement;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.AfterNavigationEvent;
import com.vaadin.flow.router.AfterNavigationObserver;
import com.vaadin.flow.router.Layout;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.RouterLayout;
import com.vaadin.flow.server.menu.MenuConfiguration;
import jakarta.annotation.security.PermitAll;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Tally;
import org.hearthway.parts.TallyChanged;
import org.hearthway.words.Words;

/**
 * The frame around every staff page: places with what waits there, find a child, who is signed in. Places are the
 * menu entries below {@code staff}, whose titles are message keys.
 */
@Layout("staff")
@JsModule("context://parts/keys.js")
@PermitAll
public class StaffLayout extends Div implements RouterLayout, AfterNavigationObserver {

    private final Main page = new Main();
    private final Map<String, Anchor> tabs = new LinkedHashMap<>();
    private final Map<Tally, Span> counts = new LinkedHashMap<>();
    private final Viewer.Person viewer;

    StaffLayout(SignedIn signedIn, Words words, ClinicSettings clinic, List<Tally> tallies) {
        this.viewer = signedIn.require();
        addClassName("hw-staff");
        page.setId("main");
        var skip = new Anchor("#main", words.say(viewer.language(), "shell.skip"));
        skip.addClassName("hw-skip");
        skip.setRouterIgnore(true);
        var keys = Keys.toggle(new NativeButton(words.say(viewer.language(), "shell.keys.off")));
        keys.addClassName("hw-skip");
        add(skip, keys, head(words, clinic, tallies), page);
        Pages.language(viewer.language());
        Pages.density("staff");
    }

    private Header head(Words words, ClinicSettings clinic, List<Tally> tallies) {
        var language = viewer.language();
        var brand = Tags.link("hw-brand", "", Pages.mark(), new Span("Hearthway"));
        brand.getElement().removeAttribute("router-link");
        brand.setHref("./");
        var band = Tags.div("hw-band", brand);
        MenuConfiguration.getMenuEntries().stream()
                .filter(entry -> entry.path().startsWith("/staff/"))
                .forEach(entry -> {
                    var place = entry.path().substring(1);
                    var tab = Tags.link("tab", place, words.say(language, entry.title()));
                    tallies.stream()
                            .filter(tally -> tally.place().equals(place))
                            .findFirst()
                            .ifPresent(tally -> {
                                var count = Tags.span("hw-count", "");
                                counts.put(tally, count);
                                tab.add(count);
                            });
                    tabs.put(place, tab);
                    band.add(tab);
                });
        band.add(Tags.span("grow", ""), find(words, viewer), me(words, viewer));
        var header = new Header();
        if (clinic.demo()) {
            header.add(Tags.div("hw-demo", Tags.span("", words.say(language, "shell.demo"))));
        }
        header.add(band);
        return header;
    }

    @Override
    protected void onAttach(AttachEvent event) {
        super.onAttach(event);
        var moved = ComponentUtil.addListener(event.getUI(), TallyChanged.class, changed -> count());
        addDetachListener(leaving -> {
            moved.remove();
            leaving.unregisterListener();
        });
    }

    private void count() {
        counts.forEach((tally, count) -> count.setText(String.valueOf(tally.count(viewer))));
    }

    private static Component find(Words words, Viewer.Person viewer) {
        var field = new Input();
        field.setId("find-child");
        field.setPlaceholder(words.say(viewer.language(), "shell.find"));
        field.getElement().setAttribute("aria-label", words.say(viewer.language(), "shell.find"));
        field.addValueChangeListener(
                event -> UI.getCurrent().navigate("staff/children", QueryParameters.of("q", event.getValue())));
        // not while somebody types, as a date is typed with the same key
        Keys.press(field, "/");
        var box = Tags.span("hw-find", Icon.SEARCH.draw("sm"));
        box.add(field);
        return box;
    }

    private static Component me(Words words, Viewer.Person viewer) {
        var out = new Anchor("sign-out", words.say(viewer.language(), "shell.out"));
        out.setRouterIgnore(true);
        return Tags.span(
                "hw-me",
                Tags.span("", viewer.name()),
                Tags.span("hw-initial u-small", viewer.name().substring(0, 1)),
                out);
    }

    @Override
    public void showRouterLayoutContent(HasElement content) {
        page.getElement().removeAllChildren();
        page.getElement().appendChild(content.getElement());
    }

    @Override
    public void afterNavigation(AfterNavigationEvent event) {
        count();
        var here = event.getLocation().getPath();
        var best = tabs.keySet().stream()
                .filter(place -> belongs(here, place))
                .max(java.util.Comparator.comparingInt(String::length));
        tabs.forEach((place, tab) -> {
            if (Optional.of(place).equals(best)) {
                tab.getElement().setAttribute("aria-current", "page");
            } else {
                tab.getElement().removeAttribute("aria-current");
            }
        });
    }

    private static boolean belongs(String here, String place) {
        // a child's folder belongs to the list of children
        return here.startsWith(place) || (place.equals("staff/children") && here.startsWith("staff/child/"));
    }
}
