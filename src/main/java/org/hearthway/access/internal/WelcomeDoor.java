package org.hearthway.access.internal;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.access.NewAccount;
import org.hearthway.access.Passwords;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.words.Say;
import org.hearthway.words.Words;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * The pages behind an invitation: a person sets a password; the first administrator of a clinic also says who that is.
 * Opening the page changes nothing, so that scanners of mail may.
 */
@Controller
class WelcomeDoor {

    private static final String SET_PASSWORD = "access/welcome";
    private static final String FIRST = "access/first";
    private static final String DONE = "redirect:/sign-in?ready";

    private final Passwords passwords;
    private final FirstAdministrator first;
    private final ClinicSettings clinic;
    private final Words words;

    WelcomeDoor(Passwords passwords, FirstAdministrator first, ClinicSettings clinic, Words words) {
        this.passwords = passwords;
        this.first = first;
        this.clinic = clinic;
        this.words = words;
    }

    @GetMapping("/welcome/{token}")
    String open(@PathVariable String token, HttpServletRequest request, HttpServletResponse response, Model model) {
        model.addAttribute("token", token);
        if (first.opens(token)) {
            model.addAttribute("name", "");
            model.addAttribute("email", "");
            return FIRST;
        }
        var account = passwords.opens(token);
        if (account.isEmpty()) {
            return dead(response, model);
        }
        greet(account.get(), request, model);
        return SET_PASSWORD;
    }

    private void greet(Account account, HttpServletRequest request, Model model) {
        if (request.getParameter("lang") == null) {
            model.addAttribute("say", words.in(account.language()));
        }
        model.addAttribute("name", account.name());
        model.addAttribute("email", account.email());
    }

    private String dead(HttpServletResponse response, Model model) {
        response.setStatus(HttpServletResponse.SC_NOT_FOUND);
        model.addAttribute("officeLine", clinic.officeLine());
        return "access/dead-link";
    }

    @PostMapping("/welcome/{token}")
    String set(
            @PathVariable String token,
            @RequestParam String password,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        try {
            passwords.set(token, password);
            return DONE;
        } catch (NotAvailable usedOrEnded) {
            return dead(response, model);
        } catch (Invalid invalid) {
            var account = passwords.opens(token);
            if (account.isEmpty()) {
                return dead(response, model);
            }
            greet(account.get(), request, model);
            return again(SET_PASSWORD, invalid, token, response, model);
        }
    }

    /** Where the form was posted is no page of its own: whoever turns its language comes back. */
    @GetMapping("/welcome/{token}/first")
    String back(@PathVariable String token, @ModelAttribute("say") Say say) {
        return "redirect:/welcome/" + token + "?lang=" + say.language().tag();
    }

    @PostMapping("/welcome/{token}/first")
    String become(
            @PathVariable String token,
            @RequestParam String name,
            @RequestParam String email,
            @RequestParam String password,
            @ModelAttribute("say") Say say,
            HttpServletResponse response,
            Model model) {
        try {
            first.become(
                    token,
                    new NewAccount(name, email, "", Set.of(Role.ADMINISTRATOR), say.language(), clinic.zone()),
                    password);
            return DONE;
        } catch (NotAvailable usedOrEnded) {
            return dead(response, model);
        } catch (Invalid invalid) {
            model.addAttribute("name", name);
            model.addAttribute("email", email);
            return again(FIRST, invalid, token, response, model);
        }
    }

    private static String again(String page, Invalid invalid, String token, HttpServletResponse response, Model model) {
        response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        model.addAttribute("token", token);
        model.addAttribute("problems", invalid.problems().stream().collect(Collectors.toMap(Problem::field, p -> p)));
        return page;
    }
}
