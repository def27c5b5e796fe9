package org.hearthway.sign.ui;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.sign.CallLines;
import org.hearthway.sign.OfflineCopy;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Sign.Topic;
import org.hearthway.sign.Signs;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** When to call, for anybody: no sign-in, and after a first visit no network. */
@Controller
class CallPage {

    /** The signs of one topic within one urgency. */
    record Group(String topic, List<Sign> signs) {}

    /** Whom to call, and which signs mean this call. */
    record Section(String style, CallLines.Line line, List<Group> groups) {}

    private static final List<Topic> TOPICS =
            List.of(Topic.PUMP, Topic.SURGERY, Topic.STIMULATOR, Topic.REHAB, Topic.MEDICINE, Topic.ANY_CHILD);

    private final Signs signs;
    private final CallLines lines;
    private final ClinicSettings clinic;
    private final OfflineCopy offline;
    private final Clock clock;

    CallPage(Signs signs, CallLines lines, ClinicSettings clinic, OfflineCopy offline, Clock clock) {
        this.signs = signs;
        this.lines = lines;
        this.clinic = clinic;
        this.offline = offline;
        this.clock = clock;
    }

    @GetMapping("/call")
    String call(Model model) {
        var all = signs.all();
        var sections = lines.lines().stream().map(line -> section(line, all)).collect(Collectors.toList());
        var topics = TOPICS.stream()
                .filter(topic -> all.stream().anyMatch(sign -> sign.topic() == topic))
                .map(CallPage::written)
                .collect(Collectors.toList());
        model.addAttribute("sections", sections);
        model.addAttribute("topics", topics);
        model.addAttribute("officeNow", lines.officeNow());
        model.addAttribute("openings", lines.openings());
        model.addAttribute("today", LocalDate.ofInstant(clock.instant(), clinic.zone()));
        model.addAttribute("version", offline.version());
        return "sign/call";
    }

    private static Section section(CallLines.Line line, List<Sign> all) {
        var groups = Arrays.stream(Topic.values())
                .map(topic -> new Group(
                        written(topic),
                        all.stream()
                                .filter(sign -> sign.topic() == topic && sign.urgency() == line.urgency())
                                .collect(Collectors.toList())))
                .filter(group -> !group.signs().isEmpty())
                .collect(Collectors.toList());
        return new Section(written(line.urgency()), line, groups);
    }

    private static String written(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The worker lies deeper than the page that it serves, so the answer widens its reach to that page. */
    @GetMapping("/call/worker.js")
    ResponseEntity<Resource> worker() {
        return ResponseEntity.ok()
                .contentType(MediaType.valueOf("text/javascript;charset=UTF-8"))
                .cacheControl(CacheControl.noCache())
                .header("Service-Worker-Allowed", "/call")
                .header(HttpHeaders.VARY, HttpHeaders.ACCEPT_ENCODING)
                .body(new ClassPathResource("META-INF/resources/offline/worker.js"));
    }
}
