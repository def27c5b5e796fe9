package org.hearthway.access.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Invalid;
import org.hearthway.base.Role;
import org.hearthway.child.Safeguarding;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** Everybody who may sign in; inviting them, a new link, shutting out and letting in again. */
@Route("staff/clinic")
@Menu(title = "access.menu.clinic", order = 9)
@RolesAllowed("ADMINISTRATOR")
class PeopleView extends ClinicPage {

    /** Of the team; for others a name would change nothing. */
    private static final Set<Role> SAFEGUARDING =
            EnumSet.of(Role.THERAPIST, Role.PHYSICIAN, Role.NURSE, Role.COORDINATOR);

    private final transient Accounts accounts;
    private final transient Safeguarding safeguarding;
    private final transient ClinicSettings clinic;
    private final Div link = new Div();

    PeopleView(Accounts accounts, Safeguarding safeguarding, ClinicSettings clinic, Words words, SignedIn signedIn) {
        super("people", words, signedIn);
        addClassName("hw-clinic-people");
        this.accounts = accounts;
        this.safeguarding = safeguarding;
        this.clinic = clinic;
        side.add(link, new Div());
        form();
        list();
    }

    /** A fresh form: what was typed has been taken. */
    private void form() {
        side.replace(side.getComponentAt(1), new InviteForm(words, language, clinic.zone()).draw(account -> {
                    var invitation = accounts.invite(viewer(), account);
                    show(invitation, account.name());
                    form();
                    list();
                }));
    }

    private void show(Accounts.Invitation invitation, String name) {
        link.removeAll();
        link.add(LinkSheet.of(invitation, name, viewer(), words));
    }

    private void list() {
        main.removeAll();
        var table = table(
                say("access.clinic.people"), "access.people.", "name", "email", "roles", "language", "state", "do");
        var named = safeguarding.named(viewer());
        for (var account : accounts.all(viewer())) {
            table.getBody().add(row(account, named.contains(account.id())));
        }
        main.add(table);
    }

    private NativeTableRow row(Account account, boolean named) {
        var roles = account.roles().stream()
                .sorted()
                .map(role -> say("access.role." + role.name()))
                .collect(Collectors.joining(", "));
        return Keys.row(
                new NativeTableRow(
                        cell(Tags.span("kidn", account.name())),
                        cell(Tags.span("", account.email()), Tags.div("hw-sub", Tags.span("hw-num", account.phone()))),
                        cell(
                                Tags.span("", roles),
                                Tags.div("hw-sub", Tags.span("", named ? say("access.safeguarding.named") : ""))),
                        cell(say("access.language." + account.language().name())),
                        cell(Tags.span(
                                "hw-account-state " + account.state().name().toLowerCase(java.util.Locale.ROOT),
                                say("access.state." + account.state().name()))),
                        cell(acts(account, named))),
                account.id().toString());
    }

    private Div acts(Account account, boolean named) {
        var acts = Tags.div("hw-account-acts");
        var mine = account.id().equals(viewer().account());
        if (account.state() == Account.State.DISABLED) {
            acts.add(named(account, "access.do.enable", () -> accounts.enable(viewer(), account.id())));
        } else {
            acts.add(named(
                    account, "access.do.link", () -> show(accounts.renewLink(viewer(), account.id()), account.name())));
            if (!mine) {
                acts.add(named(account, "access.do.disable", () -> accounts.disable(viewer(), account.id())));
            }
        }
        if (named || account.roles().stream().anyMatch(SAFEGUARDING::contains)) {
            acts.add(named(
                    account,
                    named ? "access.safeguarding.unname" : "access.safeguarding.name",
                    () -> safeguarding.name(viewer(), account.id(), !named)));
        }
        return acts;
    }

    private com.vaadin.flow.component.Component named(Account account, String key, Runnable work) {
        var button = Tags.button("text hw-word", say(key), pressed -> {
            try {
                attempt(work);
            } catch (Invalid invalid) {
                Told.couldNot(words.say(language, invalid.problems().get(0)));
            }
            list();
        });
        button.getElement().setAttribute("aria-label", say(key) + ": " + account.name());
        return button;
    }
}
