package org.hearthway.medicine.ui;

import com.vaadin.flow.component.html.Div;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.medicine.ToxinSessions;
import org.hearthway.medicine.ToxinSessions.Muscle;
import org.hearthway.medicine.ToxinSessions.Session;
import org.hearthway.medicine.ToxinSessions.SessionData;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** The toxin sessions of a child, and the form that writes one down. */
final class SessionsPart extends Div {

    private final transient MedicineWords say;
    private final transient ToxinSessions sessions;
    private final transient Gate gate;
    private final transient Viewer.Person viewer;
    private final transient Function<AccountId, String> name;
    private transient ChildId child;

    SessionsPart(
            MedicineWords say,
            ToxinSessions sessions,
            Gate gate,
            Viewer.Person viewer,
            ChildId child,
            Function<AccountId, String> name) {
        this.say = say;
        this.sessions = sessions;
        this.gate = gate;
        this.viewer = viewer;
        this.child = child;
        this.name = name;
        addClassName("hw-devices");
    }

    /** Reads and draws it anew, for a child. */
    void draw(ChildId of) {
        child = of;
        draw(Optional.empty(), false);
    }

    private void draw(Optional<Session> changing, boolean form) {
        removeAll();
        var may = gate.allows(viewer, Action.RECORD_MEDICINE, child);
        var muscles = sessions.muscles().stream().collect(Collectors.toMap(Muscle::id, Function.identity()));
        add(
                Tags.div("hw-colh", Tags.h2("", say.say("medicine.toxin.title"))),
                Tags.p(
                        "hw-sub",
                        say.say("medicine.toxin.interval", sessions.interval().days())));
        if (form && changing.isEmpty()) {
            add(form(changing));
        } else if (may) {
            var more = Tags.button("plain", say.say("medicine.toxin.new"), pressed -> draw(Optional.empty(), true));
            more.setId("session-add");
            add(Tags.div("", more));
        }
        var all = sessions.all(viewer, child);
        if (all.isEmpty()) {
            add(Tags.p("hw-quiet", say.say("medicine.toxin.none")));
        }
        all.forEach(session -> add(card(session, muscles, changing, may)));
    }

    private Div card(Session session, Map<String, Muscle> muscles, Optional<Session> changing, boolean may) {
        var card = new SessionCard(
                say, session, muscles, sessions.interval().notBefore(session.on()), name.apply(session.by()));
        if (changing.map(Session::id).filter(session.id()::equals).isPresent()) {
            card.add(form(changing));
        } else if (may) {
            card.add(
                    Tags.button("text", say.say("medicine.toxin.change"), pressed -> draw(Optional.of(session), true)));
        }
        return card;
    }

    private SessionForm form(Optional<Session> known) {
        return new SessionForm(
                say,
                sessions.muscles(),
                known,
                gate.allows(viewer, Action.SIGN_MEDICINE, child),
                data -> save(data, known),
                () -> draw(Optional.empty(), false));
    }

    private void save(SessionData data, Optional<Session> known) {
        try {
            known.ifPresentOrElse(
                    session -> sessions.change(viewer, child, session.id(), data, session.version()),
                    () -> sessions.enter(viewer, child, data));
            Told.done(say.say("medicine.toxin.saved"));
            draw(Optional.empty(), false);
        } catch (Overtaken overtaken) {
            // what was typed stays
            Told.couldNot(say.say("medicine.overtaken"));
        }
    }
}
