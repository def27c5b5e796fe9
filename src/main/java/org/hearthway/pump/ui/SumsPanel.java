package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.Div;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.hearthway.parts.Tags;
import org.hearthway.pump.PumpSums;
import org.hearthway.pump.engine.RefillWindow;

/** What an entry comes to, check by check, while it is typed. */
final class SumsPanel extends Div {

    private final transient FormSay say;
    private final transient Optional<RefillWindow> due;
    private final transient Optional<Runnable> figures;

    /**
     * Nothing reckoned yet.
     *
     * @param due the window in which a refill was due; empty when the entry is none
     * @param figures opens the form for figures of the pump; empty in that form itself
     */
    SumsPanel(FormSay say, Optional<RefillWindow> due, Optional<Runnable> figures) {
        this.say = say;
        this.due = due;
        this.figures = figures;
        addClassName("hw-pump-sums");
        getElement()
                .setAttribute("aria-live", "polite")
                .setAttribute("role", "region")
                .setAttribute("tabindex", "0");
        getElement().setAttribute("aria-label", say.say("pump.form.sums"));
    }

    /** Says what is waited for. */
    void waiting(String key) {
        removeAll();
        add(Tags.p("hw-sub u-my2", say.say(key)));
    }

    /**
     * Lists all that was reckoned.
     *
     * @param partly whether something of the form is left out because it is marked
     */
    void show(PumpSums reckoned, LocalDate on, boolean partly) {
        removeAll();
        if (partly) {
            add(Tags.p("hw-sub u-my2", say.say("pump.form.wait.partly")));
        }
        var list = new CheckList(say);
        due.ifPresent(window -> timing(list, window, on));
        new FillChecks(say).add(list, reckoned);
        new DoseChecks(say).add(list, reckoned);
        reckoned.bridge().ifPresent(plan -> new BridgeChecks(say, figures.orElse(() -> {})).add(list, plan));
        new DateChecks(say).add(list, reckoned);
        if (list.isEmpty()) {
            add(Tags.p("hw-sub u-my2", say.say("pump.form.wait.figures")));
            figures.ifPresent(open -> add(Tags.button("text", say.say("pump.form.to-figures"), pressed -> open.run())));
        } else {
            add(list);
        }
    }

    /** Early or late is only said. */
    private void timing(CheckList list, RefillWindow window, LocalDate on) {
        var early = ChronoUnit.DAYS.between(on, window.opens());
        var late = ChronoUnit.DAYS.between(window.day(), on);
        var says = early > 0
                ? say.say("pump.form.check.timing.early", early)
                : late > 0 ? say.say("pump.form.check.timing.late", late) : say.say("pump.form.check.timing.in");
        list.told(
                say.say("pump.form.check.timing"),
                says,
                say.say(
                        "pump.form.check.timing.window",
                        say.figures().full(window.opens()),
                        say.figures().full(window.day())));
    }
}
