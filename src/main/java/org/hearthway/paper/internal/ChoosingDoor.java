package org.hearthway.paper.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import org.hearthway.access.SignedIn;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.choosing.Choosing;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.words.Words;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/**
 * The two pages about choosing a path, for signed-in clinical staff: one for the team meeting, one that is handed to the
 * family. Every look is written to the trail. What may not be seen and what is not there get one answer.
 */
@Controller
class ChoosingDoor {

    private static final String PLACE = "/staff/child/{child}/choosing/";

    /** Sizes of the letters in points; a family reads large ones. */
    private static final Map<String, List<String>> LETTERS =
            Map.of("team", List.of("7.4", "7", "6.6", "6.2"), "family", List.of("10.4", "9.8", "9.2", "8.7"));

    private final Choosing choosing;
    private final ChildRegister children;
    private final SheetPrinter printer;
    private final AuditTrail trail;
    private final Words words;
    private final ClinicSettings clinic;
    private final SignedIn signedIn;
    private final Clock clock;

    ChoosingDoor(
            Choosing choosing,
            ChildRegister children,
            SheetPrinter printer,
            AuditTrail trail,
            Words words,
            ClinicSettings clinic,
            SignedIn signedIn,
            Clock clock) {
        this.choosing = choosing;
        this.children = children;
        this.printer = printer;
        this.trail = trail;
        this.words = words;
        this.clinic = clinic;
        this.signedIn = signedIn;
        this.clock = clock;
    }

    @GetMapping(PLACE + "team")
    ResponseEntity<byte[]> team(@PathVariable String child, Locale locale) {
        var language = Language.of(locale);
        return opened(child, "team", language, (viewer, id) -> {
            var talk = choosing.talk(viewer, id);
            trail.looked(viewer, id, "choosing team page");
            return new TeamPage.Writer(words, language)
                    .write(children.get(viewer, id), talk, choosing.facts(), today());
        });
    }

    @GetMapping(PLACE + "family")
    ResponseEntity<byte[]> family(@PathVariable String child, Locale locale) {
        var language = Language.of(locale);
        return opened(child, "family", language, (viewer, id) -> {
            var handout = choosing.handout(viewer, id);
            return new FamilyPage.Writer(words, language).write(children.get(viewer, id), handout, today());
        });
    }

    private ResponseEntity<byte[]> opened(
            String child, String page, Language language, BiFunction<Viewer, ChildId, Object> face) {
        try {
            var viewer = signedIn.require();
            var id = ChildId.parse(child).orElseThrow(NotAvailable::new);
            Map<String, Object> model =
                    Map.of("face", face.apply(viewer, id), "say", words.in(language), "clinic", clinic.name());
            return ResponseEntity.ok()
                    .contentType(MediaType.APPLICATION_PDF)
                    .header(
                            HttpHeaders.CONTENT_DISPOSITION,
                            ContentDisposition.inline()
                                    .filename("choosing-" + page + ".pdf")
                                    .build()
                                    .toString())
                    .body(printer.onOnePage(
                            "paper/choosing-" + page, language, model, Objects.requireNonNull(LETTERS.get(page))));
        } catch (NotAvailable notAvailable) {
            return ResponseEntity.notFound().build();
        }
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }
}
