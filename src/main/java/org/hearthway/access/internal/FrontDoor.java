package org.hearthway.access.internal;

import java.util.Optional;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The sign-in page, and the page of a caregiver whom no child is linked to yet. */
@Controller
class FrontDoor {

    private final ClinicSettings clinic;

    FrontDoor(ClinicSettings clinic) {
        this.clinic = clinic;
    }

    @GetMapping("/sign-in")
    String signIn(Model model, @RequestParam Optional<String> wrong) {
        model.addAttribute("wrong", wrong.isPresent());
        model.addAttribute("officeLine", clinic.officeLine());
        return "access/sign-in";
    }

    @GetMapping(Landing.NO_CHILD)
    String noChildYet(Model model) {
        model.addAttribute("officeLine", clinic.officeLine());
        return "access/no-child-yet";
    }
}
