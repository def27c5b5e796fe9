package org.hearthway.shell;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.hearthway.base.Language;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.words.Say;
import org.hearthway.words.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * What every plain page needs: {@code say}, its words in the language asked for, and {@code frame}, what stands around
 * it. A controller that knows better, for instance from whom a link was sent to, puts its own {@code say} in the model.
 */
@ControllerAdvice(annotations = Controller.class)
class PlainFrame {

    /**
     * What stands around a plain page.
     *
     * @param clinic the clinic's name
     * @param demo whether the page says that this is the demo clinic
     * @param inEnglish the same page in English
     * @param inSpanish the same page in Spanish
     * @param asked the language that the address asks for, which a form on the page hands on; null for none
     */
    record Frame(
            String clinic,
            boolean demo,
            String inEnglish,
            String inSpanish,
            @Nullable String asked) {}

    private final Words words;
    private final AskedLanguage asked;
    private final ClinicSettings clinic;

    PlainFrame(Words words, AskedLanguage asked, ClinicSettings clinic) {
        this.words = words;
        this.asked = asked;
        this.clinic = clinic;
    }

    @ModelAttribute("say")
    Say say(HttpServletRequest request, HttpServletResponse response) {
        asked.remember(request, response);
        return words.in(asked.language(request));
    }

    @ModelAttribute("frame")
    Frame frame(HttpServletRequest request) {
        return new Frame(
                clinic.name(),
                clinic.demo(),
                here(request, Language.EN),
                here(request, Language.ES),
                AskedLanguage.inAddress(request).map(Language::tag).orElse(null));
    }

    private static String here(HttpServletRequest request, Language language) {
        return UriComponentsBuilder.fromPath(request.getRequestURI())
                .query(request.getQueryString())
                .replaceQueryParam("lang", language.tag())
                .build(true)
                .toUriString();
    }
}
