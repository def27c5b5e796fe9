package org.hearthway.family;

import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.sign.Sign.Urgency;
import org.springframework.stereotype.Component;

/** The rows that call: the whole row is the link, and word, shape and weight say how urgent it is. */
class CallRows extends UnorderedList {

    /** The clinic's numbers and hours. */
    @Component
    static class Numbers {

        private final ClinicSettings clinic;

        Numbers(ClinicSettings clinic) {
            this.clinic = clinic;
        }

        String of(Urgency urgency) {
            return switch (urgency) {
                case NOW -> clinic.emergencyNumber();
                case URGENT -> clinic.urgentLine();
                case HOURS -> clinic.officeLine();
            };
        }

        String clinic() {
            return clinic.name();
        }

        /** The days and hours of the office in words: "Mon to Fri, 8:00 AM to 4:30 PM". */
        String hours(Reader reader) {
            return OfficeHours.said(reader, clinic);
        }
    }

    CallRows(Reader reader, Numbers numbers, List<Urgency> urgencies) {
        addClassName("hw-calls");
        getElement().setAttribute("aria-label", reader.say("call.who"));
        urgencies.forEach(urgency -> add(Bits.el("li", "", row(reader, numbers, urgency))));
    }

    private static com.vaadin.flow.component.Component row(Reader reader, Numbers numbers, Urgency urgency) {
        var number = numbers.of(urgency);
        var below = urgency == Urgency.HOURS ? numbers.hours(reader) : reader.say("call." + urgency + ".line");
        return Bits.call(
                style(urgency),
                number,
                icon(urgency).draw(),
                Tags.span(
                        "",
                        Bits.el("b", "", reader.say("call." + urgency)),
                        Bits.el("small", "", below),
                        Bits.el("em", "", reader.say("call.number", number))),
                Bits.el("i", "", Icon.PHONE.draw()));
    }

    static String style(Urgency urgency) {
        return switch (urgency) {
            case NOW -> "now";
            case URGENT -> "urgent";
            case HOURS -> "hours";
        };
    }

    static Icon icon(Urgency urgency) {
        return switch (urgency) {
            case NOW -> Icon.NOW;
            case URGENT -> Icon.URGENT;
            case HOURS -> Icon.HOURS;
        };
    }
}
