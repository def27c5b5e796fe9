package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;

/** The way from a day into the session on the phone, which goes on without a signal. */
final class SessionLink {

    private SessionLink() {}

    static Component of(Reader reader) {
        var link = new Anchor("session/" + reader.id());
        link.addClassNames("hw-button", "plain", "wide", "u-mb3");
        link.setRouterIgnore(true);
        link.add(Icon.PLAY.draw("sm"), Tags.span("", reader.say("family.session.begin")));
        return link;
    }
}
