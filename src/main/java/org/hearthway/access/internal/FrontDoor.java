package org.hearthway.access.internal;

import java.util.Optional;
import org.hearthway.access.SignedIn;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The address without a page, the sign-in page, and the page of a caregiver whom no child is linked to yet. */
@Controller
class FrontDoor {

    private final SignedIn signedIn;
    private final Landing landing;
    private final ClinicSettings clinic;

    FrontDoor(SignedIn signedIn, Landing landing, ClinicSettings clinic) {
        this.signedIn = signedIn;
        this.landing = landing;
        this.clinic = clinic;
    }

    @GetMapping("/")
    String door() {
        return "redirect:" + signedIn.person().map(landing::of).orElse("/sign-in");
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
