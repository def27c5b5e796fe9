package org.hearthway.paper.internal;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import org.hearthway.access.Links;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.paper.EmergencySheets;
import org.hearthway.words.Words;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/**
 * The emergency sheet behind its short-lived link, on screen and as PDF, for whoever holds the link. A link that ended
 * and one that never was get the same answer. Every look is written to the trail.
 */
@Controller
class EmergencyDoor {

    /** Where the links lead. */
    static final String PLACE = "/emergency/";

    private static final Viewer MACHINE = new Viewer.Machine("emergency-sheet");

    private final Links links;
    private final EmergencySheets sheets;
    private final SheetPrinter printer;
    private final PaperCount papers;
    private final AuditTrail trail;
    private final Words words;
    private final ClinicSettings clinic;

    EmergencyDoor(
            Links links,
            EmergencySheets sheets,
            SheetPrinter printer,
            PaperCount papers,
            AuditTrail trail,
            Words words,
            ClinicSettings clinic) {
        this.links = links;
        this.sheets = sheets;
        this.printer = printer;
        this.papers = papers;
        this.trail = trail;
        this.words = words;
        this.clinic = clinic;
    }

    @GetMapping(PLACE + "{token}")
    String page(@PathVariable String token, Locale locale, HttpServletResponse response, Model model) {
        var language = Language.of(locale);
        var link = links.open(Links.Purpose.EMERGENCY_SHEET, token);
        if (link.isEmpty()) {
            response.setStatus(HttpServletResponse.SC_NOT_FOUND);
            model.addAttribute("urgentLine", clinic.urgentLine());
            return "paper/gone";
        }
        model.addAttribute("face", face(link.get(), language, "emergency sheet"));
        model.addAttribute("clinic", clinic.name());
        model.addAttribute("paper", PLACE + token + "/sheet.pdf?lang=" + language.tag());
        model.addAttribute("until", time(language, link.get().expires()));
        model.addAttribute(
                "rests",
                papers.restsUntil(link.get().id())
                        .map(until -> words.say(language, "paper.often", until(language, until), clinic.urgentLine()))
                        .orElse(""));
        return "paper/page";
    }

    @GetMapping(PLACE + "{token}/sheet.pdf")
    ResponseEntity<byte[]> paper(@PathVariable String token, Locale locale) {
        var language = Language.of(locale);
        var link = links.open(Links.Purpose.EMERGENCY_SHEET, token);
        if (link.isEmpty()) {
            return ResponseEntity.status(HttpStatus.SEE_OTHER)
                    .header(HttpHeaders.LOCATION, PLACE + "ended")
                    .build();
        }
        if (!papers.take(link.get().id())) {
            // back to the page, which says so and shows all that the paper would
            return ResponseEntity.status(HttpStatus.SEE_OTHER)
                    .header(HttpHeaders.LOCATION, PLACE + token + "?lang=" + language.tag())
                    .build();
        }
        var face = face(link.get(), language, "emergency sheet paper");
        var pdf = printer.onOnePage(
                "paper/print", language, Map.of("face", face, "say", words.in(language), "clinic", clinic.name()));
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename("emergency-sheet.pdf")
                                .build()
                                .toString())
                .body(pdf);
    }

    private String time(Language language, Instant moment) {
        return words.time(language, moment.atZone(clinic.zone()).toLocalTime());
    }

    /** The minute after, so that whoever waits for it does not come too early. */
    private String until(Language language, Instant moment) {
        return time(language, moment.plus(Duration.ofMinutes(1)));
    }

    private SheetFace face(Links.Link link, Language language, String place) {
        var child = new ChildId(link.subject());
        var sheet = sheets.sheet(MACHINE, child);
        trail.looked(new Viewer.LinkHolder(link.id(), child), child, place);
        return SheetFace.of(sheet, words, language, clinic);
    }
}
