package org.hearthway.family;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Arrival;
import org.hearthway.program.HomeWeek.Arrived;
import org.hearthway.program.HomeWeek.Tick;
import org.hearthway.program.ProgramWords;
import org.hearthway.sign.OfflineCopy;
import org.hearthway.words.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/**
 * The session on the phone: a page without anything personal, which a phone keeps; what it takes along for one child; and
 * the door through which ticks come back. Nobody signed in is answered with 401, somebody else's child like one that does
 * not exist; the page says so and keeps what waits.
 */
@Controller
class SessionDoor {

    /** Most bytes of what a phone sends at once: a full batch of the longest notes fits. */
    static final int MOST_BYTES = 1 << 20;

    /** What a phone is told when nothing was taken. */
    record Told(String message) {}

    /** One problem of one tick. */
    record Fault(String field, String message) {}

    /** The answer to one tick; {@code key} is null where none could be read. */
    record Answer(
            @Nullable String key,
            String state,
            @Nullable String became,
            @Nullable String says,
            List<Fault> problems) {}

    /** The answers in the order of the ticks, with the server's time. */
    record Answers(long now, List<Answer> answers) {}

    /** Who is signed in on this phone, the server's time, and the token that a change carries. */
    record Here(String account, long now, PhoneSheet.Token token) {}

    /** The child's entry was put together with this one. */
    record GoesOn(String child) {}

    private final SignedIn signedIn;
    private final Readers readers;
    private final Gate gate;
    private final PhoneSheets sheets;
    private final HomeWeek week;
    private final ProgramWords programWords;
    private final Words words;
    private final OfflineCopy offline;
    private final ObjectMapper json;
    private final Clock clock;

    SessionDoor(
            SignedIn signedIn,
            Readers readers,
            Gate gate,
            PhoneSheets sheets,
            HomeWeek week,
            ProgramWords programWords,
            Words words,
            OfflineCopy offline,
            ObjectMapper json,
            Clock clock) {
        this.signedIn = signedIn;
        this.readers = readers;
        this.gate = gate;
        this.sheets = sheets;
        this.week = week;
        this.programWords = programWords;
        this.words = words;
        this.offline = offline;
        this.json = json;
        this.clock = clock;
    }

    /** The page, the same for everybody and every child. */
    @GetMapping({"/session", "/session/{child}"})
    String page(Model model) {
        model.addAttribute("version", offline.version());
        return "family/session";
    }

    /** Whoever comes back from signing in goes on where the session was left. */
    @GetMapping("/session/{child}/again")
    String again(@PathVariable String child) {
        return "redirect:/session/" + ChildId.parse(child).map(Object::toString).orElse("");
    }

    @GetMapping("/session/worker.js")
    ResponseEntity<Resource> worker() {
        return ResponseEntity.ok()
                .contentType(MediaType.valueOf("text/javascript;charset=UTF-8"))
                .cacheControl(CacheControl.noCache())
                .header("Service-Worker-Allowed", "/session")
                .header(HttpHeaders.VARY, HttpHeaders.ACCEPT_ENCODING)
                .body(new ClassPathResource("META-INF/resources/offline/worker.js"));
    }

    @GetMapping("/session/here")
    ResponseEntity<Object> here(CsrfToken token) {
        return signedIn.person()
                .<ResponseEntity<Object>>map(person ->
                        kept(HttpStatus.OK).body(new Here(person.account().toString(), clock.millis(), token(token))))
                .orElseGet(() -> signedOut());
    }

    @GetMapping("/session/{child}/week")
    ResponseEntity<Object> week(@PathVariable String child, CsrfToken token) {
        var person = signedIn.person();
        if (person.isEmpty()) {
            return signedOut();
        }
        try {
            var goesOn = readers.goesOnAs(child);
            if (goesOn.isPresent()) {
                return kept(HttpStatus.OK).body(new GoesOn(goesOn.get().toString()));
            }
            return kept(HttpStatus.OK).body(sheets.of(reader(person.get(), child), token(token)));
        } catch (NotAvailable notAvailable) {
            return told(HttpStatus.NOT_FOUND, words.say(person.get().language(), "family.session.not-yours"));
        }
    }

    private Reader reader(Viewer.Person person, String child) {
        var id = ChildId.parse(child).orElseThrow(NotAvailable::new);
        gate.require(person, Action.LOG_SESSION, id);
        return gate.allows(person, Action.SEE_FAMILY_PAGES, id) ? readers.read(child) : readers.helping(child);
    }

    private static PhoneSheet.Token token(CsrfToken token) {
        return new PhoneSheet.Token(token.getHeaderName(), token.getToken());
    }

    @PostMapping("/session/{child}/ticks")
    ResponseEntity<Object> ticks(@PathVariable String child, HttpServletRequest request) throws IOException {
        var person = signedIn.person();
        if (person.isEmpty()) {
            return signedOut();
        }
        var language = person.get().language();
        var bytes = request.getInputStream().readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            return told(HttpStatus.PAYLOAD_TOO_LARGE, words.say(language, "family.session.problem.large"));
        }
        JsonNode body;
        try {
            body = json.readTree(bytes);
        } catch (IOException unreadable) {
            return told(HttpStatus.BAD_REQUEST, words.say(language, "family.session.problem.unreadable"));
        }
        var list = body == null ? null : body.get("ticks");
        if (list == null || !list.isArray()) {
            return told(HttpStatus.BAD_REQUEST, words.say(language, "family.session.problem.unreadable"));
        }
        if (body.hasNonNull("account")
                && !body.get("account").asText().equals(person.get().account().toString())) {
            // signed in by now is somebody else than the one who made them
            return told(HttpStatus.CONFLICT, "");
        }
        try {
            if (list.size() > HomeWeek.MOST_TICKS) {
                throw new Invalid(Problem.at("ticks", "family.session.problem.many", HomeWeek.MOST_TICKS));
            }
            var id = readers.goesOnAs(child).or(() -> ChildId.parse(child)).orElseThrow(NotAvailable::new);
            var read = StreamSupport.stream(list.spliterator(), false)
                    .map(PhoneTicks::read)
                    .toList();
            return kept(HttpStatus.OK).body(new Answers(clock.millis(), answers(person.get(), id, read)));
        } catch (Invalid tooMany) {
            return told(
                    HttpStatus.BAD_REQUEST,
                    words.say(language, tooMany.problems().get(0)));
        } catch (NotAvailable notAvailable) {
            return told(HttpStatus.NOT_FOUND, words.say(language, "family.session.not-yours"));
        }
    }

    private List<Answer> answers(Viewer.Person person, ChildId child, List<PhoneTicks.Read> read) {
        var arrived = week.bring(
                        person,
                        child,
                        read.stream().flatMap(r -> r.tick().stream()).toList())
                .iterator();
        var answers = new ArrayList<Answer>();
        for (var each : read) {
            var key = each.key().map(Object::toString).orElse(null);
            answers.add(each.tick()
                    .map(tick -> answer(person, tick, arrived.next()))
                    .orElseGet(() ->
                            new Answer(key, written(Arrival.REFUSED), null, null, faults(person, each.problems()))));
        }
        return answers;
    }

    private Answer answer(Viewer.Person person, Tick tick, Arrived arrived) {
        var exercise = programWords.name(person.language(), tick.entry().exercise());
        return new Answer(
                tick.entry().key().toString(),
                written(arrived.arrival()),
                arrived.became().map(SessionDoor::written).orElse(null),
                arrived.became()
                        .map(became -> words.say(person.language(), "family.became." + became, exercise))
                        .orElse(null),
                faults(person, arrived.problems()));
    }

    private List<Fault> faults(Viewer.Person person, List<Problem> problems) {
        return problems.stream()
                .map(problem -> new Fault(problem.field(), words.say(person.language(), problem)))
                .toList();
    }

    private static String written(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A phone keeps what it needs by itself; no cache on the way keeps anything. */
    private static ResponseEntity.BodyBuilder kept(HttpStatus status) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .cacheControl(CacheControl.noStore());
    }

    private static ResponseEntity<Object> told(HttpStatus status, String message) {
        return kept(status).body(new Told(message));
    }

    /** The page itself says it in its own language. */
    private static ResponseEntity<Object> signedOut() {
        return kept(HttpStatus.UNAUTHORIZED).body(new Told(""));
    }
}
