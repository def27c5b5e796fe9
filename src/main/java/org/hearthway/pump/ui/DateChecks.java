package org.hearthway.pump.ui;

import org.hearthway.pump.PumpSums;
import org.hearthway.pump.engine.PrintOutCheck;
import org.hearthway.pump.engine.RefillForecast.Caution;
import org.hearthway.pump.engine.RefillWindow;

/** When the alarm comes and the next refill is due, from this entry on. */
final class DateChecks {

    private final FormSay say;

    DateChecks(FormSay say) {
        this.say = say;
    }

    void add(CheckList list, PumpSums sums) {
        sums.window().flatMap(RefillWindow::printOut).ifPresent(printed -> printed(list, printed));
        sums.window().ifPresent(window -> {
            var item = list.told(
                    say.say("pump.form.check.window"),
                    say.say(
                            "pump.form.check.window.days",
                            say.figures().full(window.opens()),
                            say.figures().full(window.day())),
                    say.say("pump.form.check.window.by." + window.decides(), window.marginDays()));
            sums.forecast().ifPresent(forecast -> {
                for (var caution : Caution.values()) {
                    if (forecast.cautions().contains(caution)) {
                        item.says(say.say("pump.form.check.window.caution." + caution));
                    }
                }
                item.how(forecast.how());
            });
        });
    }

    private void printed(CheckList list, PrintOutCheck printed) {
        list.check(
                        !printed.flagged(),
                        say.say("pump.form.check.printed"),
                        say.figures().days(printed.daysApart()),
                        say.say(
                                "pump.form.check.printed.rule",
                                say.figures().days(say.rules().refill().printOutDays())))
                .says(say.say(
                        "pump.form.check.printed.both",
                        say.figures().full(printed.ours()),
                        say.figures().full(printed.printed()),
                        say.figures().full(printed.stands())));
    }
}
