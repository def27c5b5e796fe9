package org.hearthway.access.internal;

import jakarta.servlet.http.HttpServletRequest;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The sign-in page, and the page of a caregiver whom no child is linked to yet. */
@Controller
class FrontDoor {

    private final ClinicSettings clinic;

    FrontDoor(ClinicSettings clinic) {
        this.clinic = clinic;
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
    String noChildYet(Model model) {
        model.addAttribute("officeLine", clinic.officeLine());
        return "access/no-child-yet";
    }
}
