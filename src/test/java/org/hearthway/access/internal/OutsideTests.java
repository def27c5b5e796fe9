package org.hearthway.access.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesRegex;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.RequestDispatcher;
import java.util.UUID;
import org.hearthway.testing.WebTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;

/** What somebody without a sign-in sees: doors, and never what lies behind them. */
@WebTest
class OutsideTests {

    @Autowired
    private MockMvc web;

    /** AC7. */
    @Test
    void everyPageSendsAStrangerToSignIn() throws Exception {
        var routes = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("org.hearthway").stream()
                        .filter(type ->
                                type.isAnnotatedWith(Route.class) && !type.isAnnotatedWith(AnonymousAllowed.class))
                        .map(type -> type.getAnnotationOfType(Route.class).value())
                        .toList();

        assertThat(routes).contains("staff/clinic", "staff/children");
        for (var route : routes) {
            var path = route.replaceAll(":[^/]+", UUID.randomUUID().toString());
            web.perform(get("/" + path).accept(MediaType.TEXT_HTML)).andExpect(redirectedUrlPattern("**/sign-in"));
        }
    }

    /** LG3. */
    @Test
    void aFailureShowsAReferenceNumberAndNeitherTraceNorMessage() throws Exception {
        var failure = new IllegalStateException("secret of the house");

        web.perform(get("/error")
                        .accept(MediaType.TEXT_HTML)
                        .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 500)
                        .requestAttr(RequestDispatcher.ERROR_EXCEPTION, failure))
                .andExpect(status().isInternalServerError())
                .andExpect(content().string(matchesRegex("(?s).*tell the clinic this number: [0-9A-F]{8}.*")))
                .andExpect(content().string(not(containsString("secret"))))
                .andExpect(content().string(not(containsString("IllegalState"))));
        web.perform(get("/error")
                        .accept(MediaType.APPLICATION_JSON)
                        .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 500)
                        .requestAttr(RequestDispatcher.ERROR_EXCEPTION, failure))
                .andExpect(content().string(not(containsString("secret"))))
                .andExpect(content().string(not(containsString("IllegalState"))));
    }

    @Test
    void aPlainPageThatIsNotThereSaysSoInWords() throws Exception {
        web.perform(get("/error?lang=es")
                        .accept(MediaType.TEXT_HTML)
                        .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 404))
                .andExpect(status().isNotFound())
                .andExpect(content().string(containsString("lang=\"es\"")))
                .andExpect(content().string(not(containsString("Whitelabel"))));
    }
}
