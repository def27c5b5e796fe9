package org.hearthway.caseload.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Standing;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** Where a child stands with the clinic: says it, lets a second person confirm a death, takes it back. */
final class StatusSheet extends Div {

    /** What the sheet needs of the program. */
    @org.springframework.stereotype.Component
    record Parts(Standings standings, Accounts accounts, Gate gate, Words words, ClinicSettings settings) {}

    private final transient Parts parts;
    private final Viewer.Person viewer;
    private final ChildId child;
    private final String name;
    private final Language language;
    private final transient Runnable changed;
    private final Select<Status> status = new Select<>();
    private final TextArea reason;
    private final TextField service;
    private final DayField deviceDate;
    private final Div form = Tags.div("hw-status-form");
    private long seen;

    /**
     * Makes the sheet and draws it.
     *
     * @param name what the child is called
     * @param changed runs after every change
     */
    StatusSheet(Parts parts, Viewer.Person viewer, ChildId child, String name, Runnable changed) {
        this.parts = parts;
        this.viewer = viewer;
        this.child = child;
        this.name = name;
        this.language = viewer.language();
        this.changed = changed;
        addClassName("hw-status");
        reason = new TextArea(say("caseload.status.reason"));
        reason.setId("status-reason");
        service = new TextField(say("caseload.status.service"));
        service.setId("status-service");
        deviceDate = new DayField(say("caseload.status.device-date"), parts.words(), language);
        deviceDate.setHelperText(say("caseload.status.device-date.note"));
        deviceDate.setId("status-device-date");
        form.setVisible(false);
        draw();
    }

    private void draw() {
        removeAll();
        var now = parts.standings().now(viewer, child);
        seen = now.number();
        var may = parts.gate().allows(viewer, Action.CHANGE_STATUS, child);
        if (now.status() != Status.ACTIVE) {
            add(banner(now, may));
        }
        if (may) {
            add(change(now), form);
        }
    }

    private Component banner(Standing now, boolean may) {
        var banner = Tags.div("hw-banner");
        var words = Tags.div("");
        words.add(Tags.p("hw-b", say("caseload.status.is." + now.status().name())));
        words.add(Tags.p(
                "",
                say(
                        "caseload.status.said",
                        LocalDate.ofInstant(now.since(), parts.settings().zone()),
                        person(now.saidBy()),
                        now.reason())));
        now.handover().ifPresent(to -> words.add(Tags.p("", handover(to))));
        if (now.waitsForSecondPerson()) {
            words.add(Tags.p("", say("caseload.status.waits")));
        }
        now.confirmedBy()
                .ifPresent(second ->
                        words.add(Tags.p("", say("caseload.status.confirmed", person(Optional.of(second))))));
        banner.add(words);
        if (may && now.waitsForSecondPerson()) {
            var confirm = Tags.button(
                    "plain",
                    say("caseload.status.confirm"),
                    pressed -> attempt(() -> parts.standings().confirm(viewer, child, seen)));
            confirm.setId("status-confirm");
            banner.add(confirm);
        }
        return banner;
    }

    private String handover(Standing.Handover to) {
        return to.deviceDate()
                .map(day -> say("caseload.status.handover.device", to.service(), day))
                .orElse(say("caseload.status.handover", to.service()));
    }

    private String person(Optional<AccountId> account) {
        return account.map(id ->
                        parts.accounts().byId(viewer, java.util.Set.of(id)).get(id))
                .map(Account::name)
                .orElse("");
    }

    private Component change(Standing now) {
        var open = Tags.button(
                "text",
                say(
                        "caseload.status.change",
                        say("caseload.status." + now.status().name())),
                pressed -> {
                    form.setVisible(!form.isVisible());
                    if (form.isVisible()) {
                        fields(now);
                    }
                });
        open.setId("status-open");
        return open;
    }

    private void fields(Standing now) {
        form.removeAll();
        status.setLabel(say("caseload.status.to"));
        status.setItems(Arrays.stream(Status.values())
                .filter(each -> each != now.status())
                .toList());
        status.setItemLabelGenerator(each -> say("caseload.status." + each.name()));
        status.setId("status-to");
        var note = Tags.p("hw-quiet", "");
        service.setVisible(false);
        deviceDate.setVisible(false);
        status.addValueChangeListener(chosen -> {
            var to = chosen.getValue();
            note.setText(to == null ? "" : say("caseload.status.then." + to.name(), name));
            service.setVisible(to != null && to.needsReceivingService());
            deviceDate.setVisible(to != null && to.needsReceivingService());
        });
        var save = Tags.button("main", say("caseload.status.save"), pressed -> save());
        save.setId("status-save");
        form.add(status, note, service, deviceDate, reason, save);
        if (now.number() > 0 && now.undoes().isEmpty()) {
            var back = Tags.button(
                    "plain",
                    say("caseload.status.back"),
                    pressed -> attempt(() -> parts.standings().takeBack(viewer, child, reason.getValue(), seen)));
            back.setId("status-back");
            form.add(back, Tags.p("hw-quiet", say("caseload.status.back.note")));
        }
    }

    private void save() {
        attempt(() -> {
            if (status.getValue() == null) {
                throw new Invalid(org.hearthway.base.Problem.at("status", "caseload.status.choose"));
            }
            parts.standings()
                    .say(viewer, child, new Standings.Saying(status.getValue(), reason.getValue(), handover()), seen);
        });
    }

    private Optional<Standing.Handover> handover() {
        return service.isVisible()
                ? Optional.of(new Standing.Handover(service.getValue(), Optional.ofNullable(deviceDate.getValue())))
                : Optional.empty();
    }

    /** What was typed stays when it is refused, or when somebody else spoke in between. */
    private void attempt(Runnable work) {
        Map<String, HasValidation> fields =
                Map.of("status", status, "reason", reason, "service", service, "deviceDate", deviceDate);
        try {
            work.run();
            form.setVisible(false);
            reason.clear();
            changed.run();
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields, parts.words(), language);
        } catch (Overtaken overtaken) {
            seen = parts.standings().now(viewer, child).number();
            Told.couldNot(say("caseload.status.overtaken"));
        }
    }

    private String say(String key, Object... args) {
        return parts.words().say(language, key, args);
    }
}
