package org.hearthway.medicine.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.LocalDate;
import java.util.Map;
import org.hearthway.medicine.ToxinSessions.Injection;
import org.hearthway.medicine.ToxinSessions.Muscle;
import org.hearthway.medicine.ToxinSessions.Session;
import org.hearthway.medicine.ToxinSessions.State;
import org.hearthway.parts.Tags;

/** One toxin session in the folder: each place with its units and their preparation, a total for each preparation. */
final class SessionCard extends Div {

    private final transient MedicineWords say;

    /**
     * Draws it.
     *
     * @param muscles by identifier
     * @param by what the person is called who wrote it down
     */
    SessionCard(MedicineWords say, Session session, Map<String, Muscle> muscles, LocalDate notBefore, String by) {
        this.say = say;
        addClassNames("hw-sheet", "hw-medicine");
        add(Tags.div(
                "u-row u-mid",
                Tags.h2("u-l", say.full(session.on())),
                Tags.span(
                        session.state() == State.GIVEN ? "hw-label moss" : "hw-label line",
                        say.say("medicine.toxin.state." + session.state()))));
        if (!session.injections().isEmpty()) {
            var places = new UnorderedList();
            places.addClassName("hw-places");
            session.injections().forEach(injection -> places.add(new ListItem(place(injection, muscles))));
            add(places);
            session.totals().forEach(total -> add(Tags.p("hw-b", say.say("medicine.toxin.total", say.units(total)))));
        }
        if (session.state() == State.GIVEN) {
            add(Tags.p("", say.say("medicine.toxin.not-before", say.full(notBefore))));
        }
        if (!session.early().isEmpty()) {
            add(Tags.p("", say.say("medicine.toxin.early.is", session.early())));
        }
        if (!session.note().isEmpty()) {
            add(Tags.p("hw-own-words", session.note()));
        }
        var given = session.givenBy().isEmpty() ? "" : say.say("medicine.toxin.given", session.givenBy()) + " ";
        add(Tags.p("hw-sub", given + say.say("medicine.toxin.written", by)));
    }

    private String place(Injection injection, Map<String, Muscle> muscles) {
        var muscle = muscles.get(injection.muscle());
        return say.say(
                "medicine.toxin.place",
                muscle == null ? injection.muscle() : muscle.name().in(say.language()),
                say.say("medicine.toxin.side." + injection.side()),
                say.units(injection.units()));
    }
}
