package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.access.Passwords;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.Programs;
import org.hearthway.program.engine.Prescription;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SignInRequests;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Two hundred families, signed in beforehand, open Today and then its session within one minute, and log five exercises each, one
 * request a tick as phones send them; the driver runs on the same machine, in the same process. Nothing is lost; how long
 * the answers took is printed, and not held to anything.
 */
@Tag("long")
class ManyFamiliesIT {

    private static final int FAMILIES = 200;
    private static final int TICKS = 5;
    private static final long MINUTE_MS = 60_000;
    private static final LocalDate TODAY = LocalDate.ofInstant(HearthwayTest.START, People.ZONE);
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\"[^>]*value=\"([^\"]+)\"");
    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);

    /** A family: its child, and the cookie of its sign-in. */
    private record Family(ChildId child, String cookie) {}

    private final ObjectMapper json = new ObjectMapper();
    private final HttpClient http =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final List<Long> today = Collections.synchronizedList(new ArrayList<>());
    private final List<Long> opened = Collections.synchronizedList(new ArrayList<>());
    private final List<Long> logged = Collections.synchronizedList(new ArrayList<>());

    @Test
    void ofTwoHundredFamiliesInTheSameMinuteNothingIsLost() throws Exception {
        try (var clinic = RunningClinic.demoOnDisk()) {
            var families = families(clinic);
            var phones = Executors.newScheduledThreadPool(FAMILIES);
            try {
                var answers = new ArrayList<java.util.concurrent.Future<Set<UUID>>>();
                for (int i = 0; i < families.size(); i++) {
                    var family = families.get(i);
                    Callable<Set<UUID>> session = () -> session(clinic, family);
                    answers.add(phones.schedule(session, i * MINUTE_MS / FAMILIES, TimeUnit.MILLISECONDS));
                }
                var acknowledged = new HashSet<UUID>();
                for (var answer : answers) {
                    acknowledged.addAll(answer.get());
                }
                assertThat(acknowledged).hasSize(FAMILIES * TICKS);
                assertThat(kept(clinic, families)).containsExactlyInAnyOrderElementsOf(acknowledged);
            } finally {
                phones.shutdown();
            }
        }
        tell("Today opened, each of three answers", today);
        tell("session opened", opened);
        tell("tick logged", logged);
        var all = new ArrayList<>(today);
        all.addAll(opened);
        all.addAll(logged);
        tell("all answers", all);
        System.out.printf(
                "%d processors, load %.1f%n",
                Runtime.getRuntime().availableProcessors(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private static void tell(String what, List<Long> millis) {
        var sorted = millis.stream().sorted().toList();
        System.out.printf(
                "%s: %d, median %d ms, 95 of 100 within %d ms, longest %d ms%n",
                what,
                sorted.size(),
                sorted.get(sorted.size() / 2),
                sorted.get(Math.min(sorted.size() - 1, (int) Math.ceil(sorted.size() * 0.95) - 1)),
                sorted.get(sorted.size() - 1));
    }

    private static List<UUID> kept(RunningClinic clinic, List<Family> families) {
        var week = clinic.part(HomeWeek.class);
        return families.stream()
                .flatMap(family -> week.entries(new Viewer.Machine("test"), family.child(), TODAY, TODAY).stream())
                .map(logged -> logged.entry().key())
                .toList();
    }

    private Set<UUID> session(RunningClinic clinic, Family family) throws Exception {
        today(clinic, family);
        var address = clinic.url() + "/session/" + family.child();
        timed(opened, request(address, family).GET());
        var sheet = json.readTree(
                timed(opened, request(address + "/week", family).GET()).body());
        var token = sheet.get("token");
        var acknowledged = new HashSet<UUID>();
        for (var planned : sheet.get("days").get(1).get("planned")) {
            var key = UUID.randomUUID();
            var body = json.writeValueAsString(Map.of("ticks", List.of(tick(sheet, planned, key))));
            var answer = timed(
                    logged,
                    request(address + "/ticks", family)
                            .header(
                                    token.get("header").asText(),
                                    token.get("value").asText())
                            .header("Content-Type", "application/json")
                            .POST(BodyPublishers.ofString(body)));
            var state = json.readTree(answer.body()).at("/answers/0/state").asText();
            if (state.equals("kept")) {
                acknowledged.add(key);
            }
        }
        return acknowledged;
    }

    /** Opens Today as the browser does: the page, what starts the application in it, and what stands on Today. */
    private void today(RunningClinic clinic, Family family) throws Exception {
        var place = "my/" + family.child() + "/today";
        timed(today, request(clinic.url() + "/" + place, family).GET());
        var begun = json.readTree(timed(
                        today,
                        request(clinic.url() + "/?v-r=init&location=" + place + "&query=", family)
                                .GET())
                .body());
        var config = begun.get("appConfig");
        var navigate = Map.of(
                "csrfToken", config.at("/uidl/Vaadin-Security-Key").asText(),
                "rpc",
                        List.of(Map.of(
                                "type",
                                "event",
                                "node",
                                1,
                                "event",
                                "ui-navigate",
                                "data",
                                Map.of(
                                        "route", place,
                                        "query", "",
                                        "appShellTitle", "",
                                        "historyState", Map.of(),
                                        "trigger", ""))),
                "syncId", config.at("/uidl/syncId").asInt(),
                "clientId", 0);
        var drawn = timed(
                today,
                request(
                                clinic.url() + "/?v-r=uidl&v-uiId="
                                        + config.get("v-uiId").asInt(),
                                family)
                        .header("Content-Type", "application/json; charset=UTF-8")
                        .POST(BodyPublishers.ofString(json.writeValueAsString(navigate))));
        assertThat(drawn.body()).as("what is to do today").contains("hw-ex");
    }

    private static Map<String, Object> tick(JsonNode sheet, JsonNode planned, UUID key) {
        var tick = new HashMap<String, Object>();
        tick.put("key", key.toString());
        tick.put("exercise", planned.get("exercise").asText());
        tick.put("day", TODAY.toString());
        tick.put("outcome", "DONE");
        tick.put("effort", 4);
        tick.put("pain", 1);
        tick.put("ratedBy", "CHILD");
        tick.put("at", sheet.get("now").asLong());
        tick.put("version", sheet.get("version").asInt());
        return tick;
    }

    private static HttpRequest.Builder request(String address, Family family) {
        return HttpRequest.newBuilder(URI.create(address)).header("Cookie", family.cookie());
    }

    private HttpResponse<String> timed(List<Long> times, HttpRequest.Builder request) throws Exception {
        var begun = System.nanoTime();
        var answer = http.send(request.build(), BodyHandlers.ofString());
        times.add(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun));
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer;
    }

    private List<Family> families(RunningClinic clinic) throws Exception {
        var exercises = clinic.part(ExerciseLibrary.class).all().stream()
                .filter(exercise -> exercise.tags().isEmpty() && !exercise.sided())
                .limit(TICKS)
                .toList();
        assertThat(exercises).hasSize(TICKS);
        var families = new ArrayList<Family>();
        for (int i = 0; i < FAMILIES; i++) {
            families.add(family(clinic, exercises));
        }
        return families;
    }

    private Family family(RunningClinic clinic, List<Exercise> exercises) throws Exception {
        var child = Children.enter(clinic.part(ChildRegister.class));
        var email = People.freshEmail();
        var invitation = clinic.part(Accounts.class)
                .invite(
                        ADMINISTRATOR,
                        new NewAccount("Ana Lindgren", email, "", Set.of(Role.CAREGIVER), Language.EN, People.ZONE));
        clinic.part(Passwords.class).set(SignInRequests.tokenOf(invitation), SignInRequests.PASSWORD);
        clinic.part(Households.class).link(ADMINISTRATOR, child, invitation.account(), Households.Reach.FULL);
        clinic.part(Programs.class)
                .save(
                        People.with(Role.THERAPIST),
                        child,
                        new Programs.Draft(
                                TODAY,
                                exercises.stream().map(ManyFamiliesIT::line).toList(),
                                "First weeks"),
                        0);
        return new Family(child, signIn(clinic, email));
    }

    private static ProgramLine line(Exercise exercise) {
        var days = EnumSet.allOf(DayOfWeek.class);
        return new ProgramLine(
                exercise.id(),
                Prescription.of(exercise.usual(), ProgramLine.Side.NONE, days),
                days,
                TODAY,
                Optional.empty(),
                "",
                Priority.SECOND,
                "As it suits this child.",
                List.of());
    }

    private String signIn(RunningClinic clinic, String email) throws Exception {
        var address = URI.create(clinic.url() + "/sign-in");
        var page = http.send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofString());
        var token = TOKEN.matcher(page.body());
        assertThat(token.find()).isTrue();
        var form =
                Map.of("_csrf", token.group(1), "email", email, "password", SignInRequests.PASSWORD).entrySet().stream()
                        .map(field ->
                                field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                        .collect(Collectors.joining("&"));
        var answer = http.send(
                HttpRequest.newBuilder(address)
                        .header("Cookie", cookie(page))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(form))
                        .build(),
                BodyHandlers.ofString());
        assertThat(answer.headers().firstValue("Location").orElse("")).doesNotContain("sign-in");
        return cookie(answer);
    }

    private static String cookie(HttpResponse<?> answer) {
        return answer.headers().allValues("Set-Cookie").stream()
                .map(cookie -> cookie.substring(0, cookie.indexOf(';')))
                .filter(cookie -> cookie.startsWith("JSESSIONID="))
                .reduce((first, last) -> last)
                .orElseThrow();
    }
}
