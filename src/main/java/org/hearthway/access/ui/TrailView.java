package org.hearthway.access.ui;

import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.stream.Collectors;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.audit.AuditTrail;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Merges;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** Who saw, changed and was refused what, newest first. */
@Route("staff/clinic/trail")
@RolesAllowed("ADMINISTRATOR")
class TrailView extends ClinicPage {

    private static final int LINES = 200;

    TrailView(
            AuditTrail trail,
            Accounts accounts,
            ChildRegister register,
            Merges merges,
            ClinicSettings clinic,
            Words words,
            SignedIn signedIn) {
        super("trail", words, signedIn);
        addClassName("hw-clinic-trail");
        var viewer = viewer();
        var tell = new TrailWords(words, language, new People(accounts));
        var names = new HashMap<String, String>();
        var children =
                new HashMap<>(register.all(viewer).stream().collect(Collectors.toMap(Child::id, Child::fullName)));
        merges.standing(viewer)
                .forEach(merged ->
                        children.put(merged.folded().id(), merged.folded().fullName()));
        var table = table(say("access.clinic.trail"), "access.trail.", "at", "who", "child", "what");
        for (var line : trail.newest(viewer, LINES)) {
            var at = LocalDateTime.ofInstant(line.at(), clinic.zone());
            table.getBody()
                    .add(new com.vaadin.flow.component.html.NativeTableRow(
                            cell(Tags.span(
                                    "hw-num",
                                    words.date(language, at.toLocalDate()) + ", "
                                            + words.time(language, at.toLocalTime()))),
                            cell(names.computeIfAbsent(line.actor(), tag -> tell.who(viewer, tag))),
                            cell(line.child()
                                    .map(id -> children.getOrDefault(id, say("access.trail.no-child")))
                                    .orElse("")),
                            cell(tell.what(viewer, line.what()))));
        }
        main.getElement()
                .setAttribute("role", "region")
                .setAttribute("tabindex", "0")
                .setAttribute("aria-label", say("access.trail.lines"));
        main.add(table);
    }

    @Override
    KeyBar keys() {
        return new KeyBar();
    }
}
