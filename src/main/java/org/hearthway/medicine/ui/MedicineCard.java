package org.hearthway.medicine.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import java.util.Optional;
import java.util.function.Function;
import org.hearthway.base.AccountId;
import org.hearthway.base.Language;
import org.hearthway.medicine.Medicines.Medicine;
import org.hearthway.medicine.SecondCheck;
import org.hearthway.medicine.Tapers.Taper;
import org.hearthway.medicine.engine.TaperCalendar;
import org.hearthway.parts.Tags;

/** One medicine in the folder: the newest version, whether a second person checked it, its calendar. */
final class MedicineCard extends Div {

    /** What may be done from the card. */
    interface Acts {
        void change(Medicine medicine);

        void confirm(Medicine medicine);

        void sign(Medicine medicine);

        void confirmCalendar(Medicine medicine);
    }

    /**
     * How the card is looked at.
     *
     * @param mayRecord whether this person writes and checks the list
     * @param maySign whether this person signs calendars
     * @param account who looks
     * @param name what a person is called
     * @param typing whether this person types a second check below: then what is checked is not to be seen
     */
    record Look(
            boolean mayRecord, boolean maySign, AccountId account, Function<AccountId, String> name, boolean typing) {}

    private final transient MedicineWords say;
    private final transient Look look;

    MedicineCard(MedicineWords say, Medicine medicine, Optional<Taper> taper, Look look, Acts acts) {
        this.say = say;
        this.look = look;
        var data = medicine.data();
        addClassNames("hw-sheet", "hw-medicine");
        setId("medicine-" + medicine.id());
        add(Tags.h2("u-xl", data.name()));
        if (!data.form().isEmpty()) {
            add(Tags.p("hw-sub", data.form()));
        }
        var hidden = look.typing() && medicine.check().isEmpty();
        add(Tags.p("hw-dose-as", hidden ? say.say("medicine.hidden") : dose(medicine)));
        add(Tags.p("hw-sub", facts(medicine)));
        data.stop()
                .ifPresent(stop ->
                        add(Tags.p("", hidden ? "" : say.say("medicine.stopped", say.date(stop.on()), stop.reason()))));
        add(state(medicine.check(), medicine.by(), "medicine.written"));
        var buttons = Tags.div("u-row");
        if (look.mayRecord()) {
            buttons.add(Tags.button("text", say.say("medicine.change"), pressed -> acts.change(medicine)));
            if (medicine.check().isEmpty()) {
                buttons.add(second("medicine.confirm", medicine.by(), () -> acts.confirm(medicine)));
            }
        }
        if (look.maySign() && data.stop().isEmpty()) {
            buttons.add(Tags.button("text", say.say("medicine.taper.sign"), pressed -> acts.sign(medicine)));
        }
        taper.ifPresent(signed -> add(calendar(signed)));
        taper.filter(signed ->
                        look.mayRecord() && signed.holds() && signed.check().isEmpty())
                .ifPresent(signed -> buttons.add(
                        second("medicine.taper.confirm", signed.by(), () -> acts.confirmCalendar(medicine))));
        add(buttons);
    }

    private String dose(Medicine medicine) {
        var data = medicine.data();
        return data.quantity()
                .map(quantity -> say.say("medicine.dose.with", data.dose(), say.quantity(quantity)))
                .orElse(data.dose());
    }

    private String facts(Medicine medicine) {
        var data = medicine.data();
        var spanish = say.language() == Language.ES;
        var own = spanish ? data.purposeEs() : data.purposeEn();
        return say.say(
                "medicine.facts",
                say.say("medicine.how." + data.how()),
                own.isEmpty() ? data.purposeEn() + data.purposeEs() : own,
                say.date(data.since()),
                data.prescriber());
    }

    private Component state(Optional<SecondCheck> check, AccountId by, String written) {
        var label = Tags.span(
                check.isPresent() ? "hw-label moss" : "hw-label ember",
                say.say(check.isPresent() ? "medicine.checked" : "medicine.waits"));
        var who = check.map(second -> say.say(
                        "medicine.both", look.name().apply(by), look.name().apply(second.by())))
                .orElseGet(() -> say.say(written, look.name().apply(by)));
        return Tags.div("u-row u-mid", label, Tags.span("hw-sub", who));
    }

    private Component second(String key, AccountId first, Runnable act) {
        if (first.equals(look.account())) {
            return Tags.span("hw-sub", say.say("medicine.second.other"));
        }
        return Tags.button("plain", say.say(key), pressed -> act.run());
    }

    private Component calendar(Taper taper) {
        var hidden = look.typing() && taper.check().isEmpty();
        var box = Tags.div("hw-calendar", Tags.h2("u-l", say.say("medicine.taper.title")));
        if (!taper.holds()) {
            box.add(Tags.p("hw-sub", say.say("medicine.taper.over")));
        }
        if (hidden) {
            box.add(Tags.p("", say.say("medicine.hidden")));
        } else {
            box.add(rows(taper.calendar()));
        }
        box.add(
                state(taper.check(), taper.by(), "medicine.taper.signed"),
                Tags.p("hw-sub", say.say("medicine.sudden")));
        return box;
    }

    private Component rows(TaperCalendar calendar) {
        var rows = new OrderedList();
        rows.addClassName("hw-taper");
        calendar.steps()
                .forEach(step -> rows.add(row(say.say("medicine.taper.from", say.full(step.from())), step.dose())));
        calendar.stopsOn()
                .ifPresentOrElse(
                        stop -> rows.add(row(
                                say.say("medicine.taper.from", say.full(stop)),
                                say.say("medicine.taper.after.STOPPED"))),
                        () -> rows.add(new ListItem(say.say("medicine.taper.after.STAY"))));
        return rows;
    }

    private static ListItem row(String day, String what) {
        return new ListItem(Tags.span("day", day), Tags.span("what", what));
    }
}
