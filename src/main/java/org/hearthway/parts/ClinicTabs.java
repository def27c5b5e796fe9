package org.hearthway.parts;

import com.vaadin.flow.component.html.Nav;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hearthway.base.Language;
import org.hearthway.words.Words;

/** The tabs between the administrator's places. */
public final class ClinicTabs extends Nav {

    private static final Map<String, String> PLACES = new LinkedHashMap<>();

    static {
        PLACES.put("people", "staff/clinic");
        PLACES.put("children", "staff/clinic/children");
        PLACES.put("texts", "staff/clinic/texts");
        PLACES.put("paths", "staff/clinic/paths");
        PLACES.put("figures", "staff/clinic/figures");
        PLACES.put("needs", "staff/clinic/needs");
        PLACES.put("on-call", "staff/clinic/on-call");
        PLACES.put("calendar", "staff/clinic/calendar");
        PLACES.put("hazards", "staff/clinic/hazards");
        PLACES.put("settings", "staff/clinic/settings");
        PLACES.put("trail", "staff/clinic/trail");
    }

    /**
     * Draws them.
     *
     * @param open the place that is open
     */
    public ClinicTabs(Words words, Language language, String open) {
        addClassName("hw-tabs");
        getElement().setAttribute("aria-label", words.say(language, "access.clinic.tabs"));
        PLACES.forEach((place, address) -> {
            var link = Tags.link("", address, words.say(language, "access.clinic." + place));
            if (place.equals(open)) {
                Tags.open(link);
            }
            add(link);
        });
    }
}
