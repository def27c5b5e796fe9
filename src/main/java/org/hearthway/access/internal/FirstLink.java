package org.hearthway.access.internal;

import org.hearthway.base.Language;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.words.Words;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Says the first administrator's link to whoever started the clinic. It goes to the console alone and not through the
 * log, which may be kept and read by others.
 */
@Component
class FirstLink {

    private final FirstAdministrator first;
    private final ClinicSettings clinic;
    private final Words words;

    FirstLink(FirstAdministrator first, ClinicSettings clinic, Words words) {
        this.first = first;
        this.clinic = clinic;
        this.words = words;
    }

    @EventListener(ApplicationReadyEvent.class)
    void say() {
        if (!clinic.demo()) {
            first.invite().ifPresent(url -> System.out.println(words.say(Language.EN, "access.first.link", url)));
        }
    }
}
