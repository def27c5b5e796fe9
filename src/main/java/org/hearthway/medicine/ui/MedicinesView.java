package org.hearthway.medicine.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiFunction;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.medicine.MedicineId;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.Medicines.Medicine;
import org.hearthway.medicine.Medicines.MedicineData;
import org.hearthway.medicine.Tapers;
import org.hearthway.medicine.Tapers.Taper;
import org.hearthway.medicine.ToxinSessions;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** A child's medicines in the folder: the list with its second checks and calendars, and the toxin sessions. */
@Route("staff/child/:child/medicines")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class MedicinesView extends Div implements BeforeEnterObserver, HasDynamicTitle, MedicineCard.Acts {

    private final transient Medicines medicines;
    private final transient Tapers tapers;
    private final transient Accounts accounts;
    private final transient Gate gate;
    private final transient MedicineWords say;
    private final transient Viewer.Person viewer;
    private final Div left = Tags.div("hw-devices");
    private final SessionsPart sessions;
    private transient ChildId child = new ChildId(new UUID(0, 0));

    MedicinesView(
            Medicines medicines,
            Tapers tapers,
            ToxinSessions toxin,
            Accounts accounts,
            Gate gate,
            Words words,
            SignedIn signedIn) {
        this.medicines = medicines;
        this.tapers = tapers;
        this.accounts = accounts;
        this.gate = gate;
        this.viewer = signedIn.require();
        this.say = new MedicineWords(words, viewer.language());
        this.sessions = new SessionsPart(say, toxin, gate, viewer, child, this::name);
        addClassName("hw-worksheet");
        add(
                Tags.div("hw-desk", Tags.div("hw-cols u-side24", left, sessions)),
                new KeyBar().remark(say.say("medicine.keys.written-down")));
    }

    @Override
    public String getPageTitle() {
        return say.say("medicine.page");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        child = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.SEE_FOLDER, child);
        draw();
        sessions.draw(child);
    }

    private void draw() {
        draw(Optional.empty(), false, (medicine, taper) -> new Div());
    }

    /** Draws the list with a form below the medicine that it is for. */
    private void draw(
            Optional<MedicineId> open, boolean typing, BiFunction<Medicine, Optional<Taper>, Component> form) {
        left.removeAll();
        var may = gate.allows(viewer, Action.RECORD_MEDICINE, child);
        var maySign = gate.allows(viewer, Action.SIGN_MEDICINE, child);
        left.add(
                Tags.div("hw-colh", Tags.h2("", say.say("medicine.list"))),
                Tags.p("hw-sub", say.say("medicine.caution")));
        if (may) {
            var add = Tags.button("plain", say.say("medicine.form.new"), pressed -> enter());
            add.setId("medicine-add");
            left.add(Tags.div("", add));
        } else {
            left.add(Tags.p("hw-quiet", say.say("medicine.read-only")));
        }
        var all = medicines.current(viewer, child);
        if (all.isEmpty()) {
            left.add(Tags.p("hw-quiet", say.say("medicine.none")));
        }
        var calendars = tapers.current(viewer, child);
        for (var medicine : all) {
            var taper = Optional.ofNullable(calendars.get(medicine.id()));
            var here = open.filter(medicine.id()::equals).isPresent();
            left.add(new MedicineCard(
                    say,
                    medicine,
                    taper,
                    new MedicineCard.Look(may, maySign, viewer.account(), this::name, here && typing),
                    this));
            if (here) {
                var opened = form.apply(medicine, taper);
                left.add(opened);
                opened.scrollIntoView();
            }
        }
    }

    private void enter() {
        draw();
        var form = new MedicineForm(
                say,
                Optional.<MedicineData>empty(),
                data -> settle(() -> medicines.enter(viewer, child, data), "medicine.saved"),
                this::draw);
        left.add(form);
        form.scrollIntoView();
    }

    @Override
    public void change(Medicine medicine) {
        draw(
                Optional.of(medicine.id()),
                false,
                (shown, taper) -> new MedicineForm(
                        say,
                        Optional.of(shown.data()),
                        data -> settle(
                                () -> medicines.change(viewer, child, shown.id(), data, shown.version()),
                                "medicine.saved"),
                        this::draw));
    }

    @Override
    public void confirm(Medicine medicine) {
        draw(
                Optional.of(medicine.id()),
                true,
                (shown, taper) -> new AgainForm(
                        say,
                        shown,
                        again -> settle(
                                () -> medicines.confirm(viewer, child, shown.id(), again, shown.version()),
                                "medicine.confirmed"),
                        this::draw));
    }

    @Override
    public void sign(Medicine medicine) {
        draw(
                Optional.of(medicine.id()),
                false,
                (shown, taper) -> new TaperForm(
                        say,
                        say.say("medicine.taper.sign"),
                        say.say("medicine.taper.ask", shown.data().name()),
                        say.say("medicine.taper.save"),
                        data -> settle(
                                () -> tapers.sign(viewer, child, shown.id(), data, number(taper)),
                                "medicine.taper.saved"),
                        this::draw));
    }

    @Override
    public void confirmCalendar(Medicine medicine) {
        draw(
                Optional.of(medicine.id()),
                true,
                (shown, taper) -> new TaperForm(
                        say,
                        say.say("medicine.taper.confirm"),
                        say.say("medicine.taper.again", shown.data().name()),
                        say.say("medicine.confirm.same"),
                        data -> settle(
                                () -> tapers.confirm(viewer, child, shown.id(), data, number(taper)),
                                "medicine.confirmed"),
                        this::draw));
    }

    private static long number(Optional<Taper> taper) {
        return taper.map(Taper::number).orElse(0L);
    }

    private void settle(Runnable act, String told) {
        try {
            act.run();
            Told.done(say.say(told));
            draw();
        } catch (Overtaken overtaken) {
            // what was typed stays; the folder shows the other's version when it is opened anew
            Told.couldNot(say.say("medicine.overtaken"));
        }
    }

    private String name(AccountId account) {
        return Optional.ofNullable(accounts.byId(viewer, Set.of(account)).get(account))
                .map(Account::name)
                .orElse("");
    }
}
