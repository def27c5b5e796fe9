package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.testing.SignInRequests.PASSWORD;
import static org.hearthway.testing.SignInRequests.signIn;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Helpers;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.content.SignOff;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.Programs;
import org.hearthway.program.engine.Lines;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.Helping;
import org.hearthway.testing.HostileStrings;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.SignInRequests;
import org.hearthway.testing.WebTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.security.core.session.SessionInformation;
import org.springframework.security.core.session.SessionRegistry;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;

/** The door through which a phone takes the week along and brings ticks back. The clock stands at Thursday, March 12, 2026. */
@WebTest
@Import(SignInRequests.class)
class SessionDoorTests {

    private static final LocalDate TODAY = LocalDate.ofInstant(HearthwayTest.START, People.ZONE);
    private static final Viewer.Person THERAPIST = People.with(Role.THERAPIST);
    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);

    @Autowired
    private MockMvc web;

    @Autowired
    private SignInRequests people;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Helpers helpers;

    @Autowired
    private Programs programs;

    @Autowired
    private ExerciseLibrary library;

    @Autowired
    private SignOff signOff;

    @Autowired
    private HomeWeek week;

    @Autowired
    private SessionRegistry sessions;

    @Autowired
    private SettableClock clock;

    private final ObjectMapper json = new ObjectMapper();
    private ChildId child = ChildId.random();
    private Viewer.Person parent = People.with(Role.CAREGIVER);
    private MockHttpSession signedIn = new MockHttpSession();

    @BeforeEach
    void aParentOnAPhone() throws Exception {
        child = aChild();
        var somebody = people.fresh(Role.CAREGIVER);
        parent = People.as(somebody.account(), Role.CAREGIVER);
        households.link(ADMINISTRATOR, child, somebody.account(), Reach.FULL);
        signedIn = session(somebody);
    }

    private ChildId aChild() {
        var entered = Children.enter(register);
        var bridge = library.find("bridge").orElseThrow();
        signOff.accept(ADMINISTRATOR, List.of(bridge.item()));
        programs.save(THERAPIST, entered, new Programs.Draft(TODAY, List.of(line("bridge")), "First weeks"), 0);
        return entered;
    }

    private ProgramLine line(String exercise) {
        return Lines.because(ProgramLine.of(
                exercise,
                library.find(exercise).orElseThrow().usual(),
                ProgramLine.Side.NONE,
                EnumSet.allOf(DayOfWeek.class),
                TODAY,
                Optional.empty(),
                "Count aloud."));
    }

    private MockHttpSession session(SignInRequests.Somebody somebody) throws Exception {
        var session = web.perform(signIn(somebody.email(), PASSWORD))
                .andReturn()
                .getRequest()
                .getSession(false);
        return (MockHttpSession) Objects.requireNonNull(session);
    }

    private JsonNode read(MvcResult result) throws Exception {
        return json.readTree(result.getResponse().getContentAsString(StandardCharsets.UTF_8));
    }

    private JsonNode sheet(MockHttpSession session, ChildId of) throws Exception {
        return read(web.perform(get("/session/" + of + "/week").session(session))
                .andExpect(status().isOk())
                .andExpect(header().string("Cache-Control", "no-store"))
                .andReturn());
    }

    private Map<String, Object> tick(LocalDate day) {
        var tick = new HashMap<String, Object>();
        tick.put("key", UUID.randomUUID().toString());
        tick.put("exercise", "bridge");
        tick.put("day", day.toString());
        tick.put("outcome", "DONE");
        tick.put("at", clock.millis());
        tick.put("version", 1);
        tick.put("before", 0);
        tick.put("note", "");
        return tick;
    }

    private MvcResult send(MockHttpSession session, ChildId of, String body) throws Exception {
        return web.perform(post("/session/" + of + "/ticks")
                        .session(session)
                        .with(csrf().asHeader())
                        .contentType("application/json")
                        .content(body))
                .andReturn();
    }

    private MvcResult send(List<?> ticks) throws Exception {
        return send(signedIn, child, json.writeValueAsString(Map.of("ticks", ticks)));
    }

    private JsonNode answer(List<?> ticks, int place) throws Exception {
        return read(send(ticks)).get("answers").get(place);
    }

    private List<HomeWeek.Logged> kept() {
        return week.entries(parent, child, TODAY.minusDays(31), TODAY.plusDays(9));
    }

    @Test
    void bringsTheWeekInTheWordsOfThePerson() throws Exception {
        var sheet = sheet(signedIn, child);
        assertThat(sheet.get("account").asText()).isEqualTo(parent.account().toString());
        assertThat(sheet.get("now").asLong()).isEqualTo(HearthwayTest.START.toEpochMilli());
        assertThat(sheet.get("until").asLong())
                .isEqualTo(HearthwayTest.START.plus(Duration.ofDays(7)).toEpochMilli());
        assertThat(sheet.get("version").asInt()).isEqualTo(1);
        assertThat(sheet.get("days")).hasSize(9);
        assertThat(sheet.get("days").get(0).get("date").asText())
                .isEqualTo(TODAY.minusDays(1).toString());
        var bridge = sheet.get("days").get(1).get("planned").get(0);
        assertThat(bridge.get("note").asText()).isEqualTo("Count aloud.");
        assertThat(bridge.get("picture").get("moving").asText()).startsWith("/figure/");
        assertThat(sheet.get("exercises").get("bridge").get("name").asText()).isEqualTo("Bridge");
        assertThat(sheet.get("calls")).hasSize(3);
        // every word of it is there: a key in its place would be a missing one
        assertThat(sheet.get("words").toString()).doesNotContain("family.");
    }

    @Test
    void aTickIsKeptOnceHoweverOftenItIsSent() throws Exception {
        var tick = tick(TODAY);
        assertThat(answer(List.of(tick), 0).get("state").asText()).isEqualTo("kept");
        assertThat(answer(List.of(tick), 0).get("state").asText()).isEqualTo("known");
        assertThat(kept()).singleElement().satisfies(logged -> {
            assertThat(logged.entry().key()).hasToString((String) tick.get("key"));
            assertThat(logged.entry().outcome()).isEqualTo(Outcome.DONE);
        });
    }

    @Test
    void eachTickIsAnsweredOnItsOwnWithFieldAndWords() throws Exception {
        var early = tick(TODAY.plusDays(1));
        var bad = tick(TODAY);
        bad.put("pain", "much");
        var answers = read(send(List.of(early, bad, tick(TODAY), "no tick", Map.of())))
                .get("answers");
        assertThat(answers)
                .extracting(a -> a.get("state").asText())
                .containsExactly("refused", "refused", "kept", "refused", "refused");
        assertThat(answers.get(0).get("problems").get(0).get("field").asText()).isEqualTo("day");
        assertThat(answers.get(0).get("problems").get(0).get("message").asText())
                .contains("Mar 12, 2026");
        assertThat(answers.get(1).get("problems").get(0).get("field").asText()).isEqualTo("pain");
        assertThat(answers.get(4).get("problems"))
                .extracting(p -> p.get("field").asText())
                .containsExactly("key", "exercise", "day", "outcome", "at");
        assertThat(kept()).hasSize(1);
    }

    @Test
    void nothingOfABrokenOrOverlongMessageIsTaken() throws Exception {
        for (var body : List.of("", "{", "[]", "null", "{\"ticks\":7}", "{\"ticks\":{}}", "\u0000", "[".repeat(5000))) {
            var answer = send(signedIn, child, body);
            assertThat(answer.getResponse().getStatus()).as(body).isEqualTo(400);
            assertThat(read(answer).get("message").asText()).isNotBlank();
        }
        var many = new ArrayList<Object>();
        for (int i = 0; i <= HomeWeek.MOST_TICKS; i++) {
            many.add(tick(TODAY));
        }
        assertThat(send(many).getResponse().getStatus()).isEqualTo(400);
        var large = send(signedIn, child, "{\"ticks\":[\"" + "x".repeat(SessionDoor.MOST_BYTES) + "\"]}");
        assertThat(large.getResponse().getStatus()).isEqualTo(413);
        assertThat(read(large).get("message").asText()).isNotBlank();
        assertThat(kept()).isEmpty();
    }

    @Test
    void aFullBatchOfTheLongestNotesIsTaken() throws Exception {
        var many = new ArrayList<Object>();
        for (int i = 0; i < HomeWeek.MOST_TICKS; i++) {
            var tick = tick(TODAY);
            tick.put("note", "😀".repeat(1000));
            many.add(tick);
        }
        assertThat(read(send(many)).get("answers"))
                .allSatisfy(a -> assertThat(a.get("state").asText()).isEqualTo("kept"));
    }

    @Test
    void hostileTextIsText() throws Exception {
        for (var text : HostileStrings.all().filter(t -> t.length() <= 2000).toList()) {
            var tick = tick(TODAY);
            tick.put("note", text);
            assertThat(answer(List.of(tick), 0).get("state").asText()).isEqualTo("kept");
            assertThat(kept().get(0).entry().note())
                    .isEqualTo(text.replace("\u0000", "").strip());
            for (var field : List.of("exercise", "outcome", "day", "key", "reason")) {
                var odd = tick(TODAY);
                odd.put(field, text);
                var refused = send(List.of(odd)).getResponse();
                assertThat(refused.getStatus()).isEqualTo(200);
                assertThat(refused.getContentAsString(StandardCharsets.UTF_8)).contains("refused");
            }
        }
    }

    @Test
    void numbersBeyondAllBoundsAreRefusedOrCutToWhatCanBe() throws Exception {
        var wrong = new ArrayList<Object>();
        for (var number : List.of(Long.MAX_VALUE, Long.MIN_VALUE, 1.5, "7", 1e300)) {
            var tick = tick(TODAY);
            tick.put("pain", number);
            tick.put("ratedBy", "ADULT");
            wrong.add(tick);
        }
        assertThat(read(send(wrong)).get("answers")).allSatisfy(a -> {
            assertThat(a.get("state").asText()).isEqualTo("refused");
            assertThat(a.get("problems").get(0).get("field").asText()).isEqualTo("pain");
        });
        var odd = tick(TODAY);
        odd.put("at", Long.MAX_VALUE);
        odd.put("before", Long.MAX_VALUE);
        assertThat(answer(List.of(odd), 0).get("state").asText()).isEqualTo("kept");
        assertThat(kept().get(0).at()).isEqualTo(HearthwayTest.START);
    }

    @Test
    void aTickOfAnOlderVersionIsKeptAndSaysSoWhenItsExerciseIsGone() throws Exception {
        clock.advance(Duration.ofDays(1));
        var clam = library.find("clam").orElseThrow();
        programs.save(
                THERAPIST,
                child,
                new Programs.Draft(
                        TODAY.plusDays(1),
                        List.of(Lines.because(ProgramLine.of(
                                "clam",
                                clam.usual(),
                                ProgramLine.Side.EACH,
                                EnumSet.allOf(DayOfWeek.class),
                                TODAY.plusDays(1),
                                Optional.empty(),
                                ""))),
                        "Another one"),
                1);
        var answer = answer(List.of(tick(TODAY)), 0);
        assertThat(answer.get("state").asText()).isEqualTo("kept");
        assertThat(answer.get("became").asText()).isEqualTo("taken-out");
        assertThat(answer.get("says").asText()).contains("Bridge");
        assertThat(kept())
                .singleElement()
                .satisfies(logged -> assertThat(logged.version()).contains(1));
    }

    /** AC2 at this door. */
    @Test
    void anotherFamilysChildIsAnsweredLikeOneThatDoesNotExist() throws Exception {
        var anothers = aChild();
        for (var way : List.of("/week", "/ticks")) {
            var answers = new ArrayList<String>();
            for (var id : List.of(anothers.toString(), ChildId.random().toString(), "no-child")) {
                var result = way.equals("/week")
                        ? web.perform(get("/session/" + id + way).session(signedIn))
                                .andReturn()
                        : web.perform(post("/session/" + id + way)
                                        .session(signedIn)
                                        .with(csrf().asHeader())
                                        .content(json.writeValueAsString(Map.of("ticks", List.of(tick(TODAY))))))
                                .andReturn();
                assertThat(result.getResponse().getStatus()).isEqualTo(404);
                answers.add(result.getResponse().getContentAsString());
            }
            assertThat(answers).containsOnly(answers.get(0));
        }
        assertThat(week.entries(THERAPIST, anothers, TODAY, TODAY)).isEmpty();
        assertThat(sheet(signedIn, child).toString()).doesNotContain(anothers.toString());
    }

    @Test
    void whoOnlySeesTakesNothingAlong() throws Exception {
        var somebody = people.fresh(Role.CAREGIVER);
        households.link(ADMINISTRATOR, child, somebody.account(), Reach.VIEW_ONLY);
        web.perform(get("/session/" + child + "/week").session(session(somebody)))
                .andExpect(status().isNotFound());
    }

    @Test
    void aHelperTakesTheExercisesAlongAndNothingOfTheFamily() throws Exception {
        var tick = tick(TODAY);
        tick.put("note", "She cried a lot.");
        send(List.of(tick));
        var somebody = people.fresh(Role.HELPER);
        Helping.until(TODAY.plusDays(10), helpers, households, child, somebody.account());
        var sheet = sheet(session(somebody), child);
        assertThat(sheet.get("helper").asBoolean()).isTrue();
        assertThat(sheet.get("home").asText()).isEqualTo("/help/" + child + "/today");
        assertThat(sheet.get("days")
                        .get(1)
                        .get("planned")
                        .get(0)
                        .get("said")
                        .get("outcome")
                        .asText())
                .isEqualTo("DONE");
        assertThat(sheet.toString()).doesNotContain("She cried").doesNotContain("Ana Lindgren");
    }

    @Test
    void nobodySignedInIsAnsweredWith401AndTheEmptyPage() throws Exception {
        web.perform(get("/session/" + child + "/week")).andExpect(status().isUnauthorized());
        web.perform(get("/session/here")).andExpect(status().isUnauthorized());
        web.perform(post("/session/" + child + "/ticks").with(csrf().asHeader()).content("{}"))
                .andExpect(status().isUnauthorized());
        var page = web.perform(get("/session/" + child))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page).doesNotContain(child.toString());
        web.perform(get("/session/" + child + "/again")).andExpect(status().is3xxRedirection());
    }

    @Test
    void aSessionThatWasEndedIsAnsweredWith401() throws Exception {
        sessions.getAllSessions(sessions.getSessionInformation(signedIn.getId()).getPrincipal(), false)
                .forEach(SessionInformation::expireNow);
        web.perform(get("/session/" + child + "/week").session(signedIn)).andExpect(status().isUnauthorized());
    }

    @Test
    void anotherSiteCannotSendInOnesName() throws Exception {
        web.perform(post("/session/" + child + "/ticks")
                        .session(signedIn)
                        .content(json.writeValueAsString(Map.of("ticks", List.of(tick(TODAY))))))
                .andExpect(status().isForbidden());
        assertThat(kept()).isEmpty();
    }

    @Test
    void theTokenOfTheWeekLetsTicksIn() throws Exception {
        var token = sheet(signedIn, child).get("token");
        web.perform(post("/session/" + child + "/ticks")
                        .session(signedIn)
                        .header(token.get("header").asText(), token.get("value").asText())
                        .content(json.writeValueAsString(Map.of("ticks", List.of(tick(TODAY))))))
                .andExpect(status().isOk());
        assertThat(kept()).hasSize(1);
    }

    @Test
    void ticksOfTheOneWhoWasSignedInBeforeAreNotKeptUnderAnothersName() throws Exception {
        var body = Map.of("account", UUID.randomUUID().toString(), "ticks", List.of(tick(TODAY)));
        assertThat(send(signedIn, child, json.writeValueAsString(body))
                        .getResponse()
                        .getStatus())
                .isEqualTo(409);
        assertThat(kept()).isEmpty();
    }
}
