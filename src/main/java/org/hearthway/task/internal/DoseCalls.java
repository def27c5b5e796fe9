package org.hearthway.task.internal;

import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.pump.events.PumpEntered;
import org.hearthway.task.Assignee;
import org.hearthway.task.Tasks;
import org.hearthway.task.Tasks.Asked;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Asks the team to call a family some days after the dose of a pump was changed; not after one of long ago. */
@Component
class DoseCalls {

    private final Tasks tasks;
    private final ReadyTexts texts;
    private final TaskRules rules;
    private final ClinicCalendar calendar;

    DoseCalls(Tasks tasks, ReadyTexts texts, TaskRules rules, ClinicCalendar calendar) {
        this.tasks = tasks;
        this.texts = texts;
        this.rules = rules;
        this.calendar = calendar;
    }

    @EventListener
    void on(PumpEntered entered) {
        if (!entered.doseChanged()) {
            return;
        }
        for (var text : texts.after(ReadyTexts.After.DOSE_CHANGE)) {
            var due = day(entered.on(), text.days());
            if (!due.isBefore(rules.today())) {
                tasks.give(
                        entered.by(),
                        entered.child(),
                        new Asked(
                                new Assignee.AnyOf(text.to()),
                                text.says().en(),
                                text.says().es(),
                                due,
                                Optional.empty()));
            }
        }
    }

    /** The last open day within the time; when there is none, the first after it: a late call beats no call. */
    private LocalDate day(LocalDate changed, int within) {
        var last = calendar.onOrBefore(changed.plusDays(within));
        return last.isAfter(changed) ? last : calendar.onOrAfter(changed.plusDays(within));
    }
}
