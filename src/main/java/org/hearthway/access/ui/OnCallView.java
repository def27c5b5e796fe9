package org.hearthway.access.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.OnCall;
import org.hearthway.access.SignedIn;
import org.hearthway.base.AccountId;
import org.hearthway.base.Invalid;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** Who of the team is told of a sign that nobody takes up, in which order, and who looks after missed visits. */
@Route("staff/clinic/on-call")
@RolesAllowed("ADMINISTRATOR")
class OnCallView extends ClinicPage {

    private final transient OnCall onCall;
    private final transient Accounts accounts;
    private final transient ClinicSettings clinic;

    OnCallView(OnCall onCall, Accounts accounts, ClinicSettings clinic, Words words, SignedIn signedIn) {
        super("on-call", words, signedIn);
        this.onCall = onCall;
        this.accounts = accounts;
        this.clinic = clinic;
        draw();
    }

    private void draw() {
        var kept = onCall.now(viewer());
        var able = onCall.able(viewer());
        main.removeAll();
        side.removeAll();
        var minutes = new IntegerField(say("access.on-call.minutes"));
        minutes.setValue(kept.order().minutes());
        minutes.setStepButtonsVisible(true);
        minutes.setManualValidation(true);
        minutes.setHelperText(say("access.on-call.minutes.help", OnCall.LEAST_MINUTES, OnCall.MOST_MINUTES));
        var hours = hours();
        var office = new OrderList(
                words,
                language,
                say("access.on-call.office"),
                say("access.on-call.office.note", hours),
                named(kept.order().office()),
                able);
        var outside = new OrderList(
                words,
                language,
                say("access.on-call.outside"),
                say("access.on-call.outside.note"),
                named(kept.order().outside()),
                able);
        var missed = missed(kept, able);
        Map<String, HasValidation> fields =
                Map.of("minutes", minutes, "office", office.field(), "outside", outside.field(), "missed", missed);
        var save = Tags.button("main", say("access.on-call.save"), pressed -> {
            var order = new OnCall.Order(
                    Optional.ofNullable(minutes.getValue()).orElse(0),
                    office.order(),
                    outside.order(),
                    Optional.ofNullable(missed.getValue()).map(Account::id));
            save(order, kept.version(), fields);
        });
        save.setId("save-on-call");
        main.add(
                Tags.div("hw-orders", office, outside),
                Tags.div("hw-sheet hw-side-form hw-on-call", minutes, missed, save));
        tell(kept);
    }

    private Select<Account> missed(OnCall.Kept kept, List<Account> able) {
        var missed = new Select<Account>();
        missed.setLabel(say("access.on-call.missed"));
        missed.setHelperText(say("access.on-call.missed.help"));
        missed.setEmptySelectionAllowed(true);
        missed.setEmptySelectionCaption(say("access.on-call.missed.nobody"));
        var choice = new ArrayList<>(able);
        var now = named(kept.order().missed().stream().toList());
        now.stream().filter(one -> !choice.contains(one)).forEach(choice::add);
        missed.setItems(choice);
        missed.setItemLabelGenerator(account -> account == null ? say("access.on-call.missed.nobody") : account.name());
        now.forEach(missed::setValue);
        return missed;
    }

    private void save(OnCall.Order order, long seen, Map<String, HasValidation> fields) {
        attempt(() -> {
            try {
                onCall.say(viewer(), order, seen);
                Told.done(say("access.on-call.saved"));
                draw();
            } catch (Invalid invalid) {
                Told.problems(invalid.problems(), fields, words, language);
            }
        });
    }

    /** What happens by these settings, and who said them last. */
    private void tell(OnCall.Kept kept) {
        Div sheet = Tags.div("hw-sheet hw-side-form", Tags.h2("", say("access.on-call.how")));
        sheet.add(Tags.p("", say("access.on-call.how.first")));
        sheet.add(Tags.p("", say("access.on-call.how.next", kept.order().minutes())));
        sheet.add(Tags.p("", say("access.on-call.how.over")));
        sheet.add(Tags.p("hw-quiet hw-s", said(kept)));
        side.add(sheet);
    }

    private String said(OnCall.Kept kept) {
        return kept.saidAt()
                .map(at -> LocalDateTime.ofInstant(at, clinic.zone()))
                .map(at -> say(
                        "access.on-call.said",
                        named(kept.saidBy().stream().toList()).stream()
                                .map(Account::name)
                                .findFirst()
                                .orElse(""),
                        at.toLocalDate(),
                        at.toLocalTime(),
                        kept.version()))
                .orElseGet(() -> say("access.on-call.unsaid"));
    }

    private String hours() {
        return words.time(language, clinic.officeOpens()) + " – " + words.time(language, clinic.officeCloses());
    }

    private List<Account> named(List<AccountId> ids) {
        var known = accounts.byId(viewer(), ids);
        return ids.stream()
                .flatMap(id -> Optional.ofNullable(known.get(id)).stream())
                .toList();
    }

    @Override
    KeyBar keys() {
        return new KeyBar();
    }
}
