package org.hearthway.access.ui;

import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.stream.Collectors;
import org.hearthway.access.SignedIn;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** What the clinic says about itself, as the program was started with it. */
@Route("staff/clinic/settings")
@RolesAllowed("ADMINISTRATOR")
class SettingsView extends ClinicPage {

    SettingsView(ClinicSettings clinic, Words words, SignedIn signedIn) {
        super("settings", words, signedIn);
        var list = new DescriptionList();
        list.addClassName("hw-settings");
        add(list, "name", clinic.name());
        add(list, "sender", clinic.senderName() + " <" + clinic.senderAddress() + ">");
        add(list, "zone", clinic.zone().getId());
        add(list, "emergency", clinic.emergencyNumber());
        add(list, "urgent", clinic.urgentLine());
        add(list, "office", clinic.officeLine());
        add(
                list,
                "hours",
                clinic.officeDays().stream()
                                .sorted()
                                .map(day -> words.shortWeekday(
                                        language, LocalDate.EPOCH.with(TemporalAdjusters.nextOrSame(day))))
                                .collect(Collectors.joining(", "))
                        + " · " + words.time(language, clinic.officeOpens()) + " – "
                        + words.time(language, clinic.officeCloses()));
        add(list, "address", clinic.baseUrl());
        main.add(Tags.div("hw-sheet hw-side-form", list));
        side.add(Tags.p("hw-quiet", say(clinic.demo() ? "access.settings.demo" : "access.settings.where")));
    }

    private void add(DescriptionList list, String key, String says) {
        list.add(new DescriptionList.Term(say("access.settings." + key)), new DescriptionList.Description(says));
    }

    @Override
    KeyBar keys() {
        return new KeyBar();
    }
}
