package org.hearthway.sign.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.setup.SecurityMockMvcConfigurers.springSecurity;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.servlet.http.Cookie;
import java.time.Instant;
import java.util.List;
import org.hearthway.base.Role;
import org.hearthway.content.SignOff;
import org.hearthway.sign.Signs;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.context.WebApplicationContext;

@HearthwayTest
class CallPageTests {

    @Autowired
    private WebApplicationContext context;

    @Autowired
    private SettableClock clock;

    @Autowired
    private SignOff signOff;

    @Autowired
    private Signs signs;

    private MockMvc mvc;

    @BeforeEach
    void begin() {
        clock.set(HearthwayTest.START);
        mvc = MockMvcBuilders.webAppContextSetup(context)
                .apply(springSecurity())
                .build();
    }

    private String page(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request)
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void opensWithoutSignInWithTheThreeNumbersInOrder() throws Exception {
        assertThat(page(get("/call")))
                .contains("lang=\"en\"", "Not sure? Call.", "A call comes first. Reporting here never replaces it.")
                .containsSubsequence("href=\"tel:5550100\"", "href=\"tel:5550121\"", "href=\"tel:5550134\"")
                .contains("If you feel your child’s life is at risk, call");
    }

    @Test
    void speaksTheLanguageThatTheAddressAsksFor() throws Exception {
        assertThat(page(get("/call").param("lang", "es").header("Accept-Language", "en")))
                .contains("lang=\"es\"", "¿Hay dudas? Llame.", "La llamada va primero.")
                .containsSubsequence("href=\"tel:5550100\"", "href=\"tel:5550121\"", "href=\"tel:5550134\"")
                .doesNotContain("Not sure? Call.");
    }

    @Test
    void speaksTheLanguageOfTheBrowserUnlessAnotherWasAskedForBefore() throws Exception {
        var french = "fr-CA, es;q=0.8, en;q=0.5";
        assertThat(page(get("/call").header("Accept-Language", french))).contains("lang=\"es\"");
        assertThat(page(get("/call").header("Accept-Language", french).cookie(new Cookie("hearthway-language", "en"))))
                .contains("lang=\"en\"");
        assertThat(page(get("/call").param("lang", "<script>")))
                .contains("lang=\"en\"")
                .doesNotContain("<script>\"");
    }

    @Test
    void remembersTheLanguageAskedFor() throws Exception {
        mvc.perform(get("/call").param("lang", "es"))
                .andExpect(header().string("Set-Cookie", org.hamcrest.Matchers.startsWith("hearthway-language=es")));
        mvc.perform(get("/call")).andExpect(header().doesNotExist("Set-Cookie"));
    }

    @Test
    void offersTheSamePageInTheOtherLanguage() throws Exception {
        assertThat(page(get("/call").queryParam("lang", "en"))).contains("href=\"/call?lang=es\"");
    }

    @Test
    void saysAtNightWhenTheOfficeOpensAndTheUrgentLineIfItGetsWorse() throws Exception {
        clock.set(Instant.parse("2026-03-13T06:00:00Z"));
        var worse = "It opens Friday, March 13 at 8:00 AM. If it gets worse, call the urgent line: 555-0121.";
        assertThat(page(get("/call"))).contains("The office is closed now. " + worse);
        assertThat(page(get("/call").param("lang", "es")))
                .contains(
                        "Abre a las 8:00 a.\u00a0m. el viernes, 13 de marzo. Si empeora, llame a la línea urgente: 555-0121.");
    }

    @Test
    void saysOnAHolidayThatTheOfficeOpensOnTheNextWorkingDay() throws Exception {
        // Friday, July 3, 2026: the holiday of July 4 is kept that day
        clock.set(Instant.parse("2026-07-03T15:00:00Z"));
        assertThat(page(get("/call"))).contains("It opens Monday, July 6 at 8:00 AM.");
    }

    @Test
    void showsAcceptedSignsOnly() throws Exception {
        var beep = signs.find("pump-beep").orElseThrow();
        signOff.accept(
                People.with(Role.ADMINISTRATOR),
                List.of(new SignOff.Item("signs", beep.id(), beep.provenance().version())));
        assertThat(page(get("/call")))
                .contains("The pump makes a sound: any beep, even once.")
                .doesNotContain("Your child had a hit on the device");
        assertThat(page(get("/call").param("lang", "es"))).contains("cualquier pitido");
    }

    @Test
    void handsOutAWorkerThatReachesThePage() throws Exception {
        mvc.perform(get("/call/worker.js"))
                .andExpect(status().isOk())
                .andExpect(header().string("Service-Worker-Allowed", "/call"))
                .andExpect(header().string("Content-Type", "text/javascript;charset=UTF-8"));
    }

    @Test
    void carriesNoScriptAndNoStyleInThePageItself() throws Exception {
        assertThat(page(get("/call")))
                .doesNotContainPattern("<script(?![^>]*src=)")
                .doesNotContainPattern("<style|\\sstyle=|\\son[a-z]+=");
    }
}
