package org.hearthway.access.internal;

import jakarta.servlet.http.HttpServletRequest;
import org.hearthway.access.SignedIn;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.words.Words;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The sign-in page, and the page of a caregiver whom no child is linked to yet. */
@Controller
class FrontDoor {

    private final ClinicSettings clinic;
    private final SignedIn signedIn;
    private final Words words;

    FrontDoor(ClinicSettings clinic, SignedIn signedIn, Words words) {
        this.clinic = clinic;
        this.signedIn = signedIn;
        this.words = words;
    }

    @GetMapping(SecurityConfiguration.SIGN_IN)
    String signIn(HttpServletRequest request, Model model) {
        var asked = request.getParameterMap().keySet();
        model.addAttribute("wrong", asked.contains("wrong"));
        model.addAttribute("wait", asked.contains("wait"));
        model.addAttribute("ready", asked.contains("ready"));
        model.addAttribute("email", FailedSignIn.typed(request.getSession(false)));
        model.addAttribute("officeLine", clinic.officeLine());
        return "access/sign-in";
    }

    @GetMapping(Landing.NO_CHILD)
    String noChildYet(HttpServletRequest request, Model model) {
        if (request.getParameter("lang") == null) {
            signedIn.person().ifPresent(person -> model.addAttribute("say", words.in(person.language())));
        }
        model.addAttribute("officeLine", clinic.officeLine());
        return "access/no-child-yet";
    }
}
