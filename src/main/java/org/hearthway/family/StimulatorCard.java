package org.hearthway.family;

import com.vaadin.flow.component.html.Section;
import java.time.LocalDate;
import org.hearthway.parts.Tags;
import org.hearthway.stimulator.Stimulators.Outlook;

/**
 * What a family needs to know of a generator: when its battery was and will be read, how often it is charged, and when
 * a new one is planned. All of it comes from readings that two people confirmed; no setting is told.
 */
class StimulatorCard extends Section {

    /** What lies further ahead is no plan yet. Clinic practice. */
    private static final int DAYS_AHEAD = 400;

    private final transient Reader reader;

    /**
     * Draws it.
     *
     * @param asks whether anything is asked of the family now
     */
    StimulatorCard(Reader reader, Outlook outlook, boolean asks) {
        this.reader = reader;
        addClassName("hw-sheet");
        getElement().setAttribute("aria-label", reader.say("family.stimulator"));
        add(Tags.h2("u-xl", reader.say("family.stimulator")));
        outlook.lastChecked().ifPresent(day -> add(Tags.p("u-mt1", reader.say("family.stimulator.read", date(day)))));
        if (asks) {
            outlook.nextReading().ifPresent(this::next);
            outlook.from().ifPresent(from -> outlook.by().ifPresent(by -> replacement(from, by)));
        }
        outlook.chargeEveryDays().ifPresent(days -> {
            add(Tags.p("hw-b u-mt3", reader.say("family.stimulator.charge", days)));
            add(Tags.p("", reader.say("family.stimulator.charge.call")));
        });
        add(Tags.link("hw-b", reader.address("path"), reader.say("family.stimulator.path")));
    }

    /** Whether there is anything to tell. */
    static boolean isNeeded(Outlook outlook) {
        return outlook.lastChecked().isPresent() || outlook.nextReading().isPresent();
    }

    private void next(LocalDate by) {
        if (by.isBefore(reader.today())) {
            add(Tags.p("hw-b u-mt3", reader.say("family.stimulator.next.passed")));
        } else if (isNear(by)) {
            add(Tags.p("hw-b u-mt3", reader.say("family.stimulator.next", date(by))));
        }
    }

    private void replacement(LocalDate from, LocalDate by) {
        if (isNear(from)) {
            add(Tags.p(
                    "hw-b u-mt3",
                    from.isBefore(by)
                            ? reader.say("family.stimulator.change.between", date(from), date(by))
                            : reader.say("family.stimulator.change.by", date(by))));
            add(Tags.p("", reader.say("family.stimulator.change.why")));
        }
    }

    private boolean isNear(LocalDate day) {
        return !day.isAfter(reader.today().plusDays(DAYS_AHEAD));
    }

    private String date(LocalDate day) {
        return reader.words().dateWithYear(reader.language(), day);
    }
}
