package org.hearthway.reminder.internal;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import org.hearthway.access.Links;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits;
import org.hearthway.words.Words;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * The page behind the link of a reminder: one visit, answered without signing in. Opening it changes nothing, however
 * often, because scanners of mail do that; an answer is posted from the page itself, for the time that the page showed.
 * It tells no name of a child. Posts carry the framework's token, so a page elsewhere cannot answer.
 */
@Controller
class AnswerDoor {

    private static final String PAGE = "reminder/answer";

    private final Links links;
    private final Visits visits;
    private final OutboxRows rows;
    private final Wording wording;
    private final Words words;
    private final ClinicSettings clinic;
    private final Clock clock;

    AnswerDoor(
            Links links,
            Visits visits,
            OutboxRows rows,
            Wording wording,
            Words words,
            ClinicSettings clinic,
            Clock clock) {
        this.links = links;
        this.visits = visits;
        this.rows = rows;
        this.wording = wording;
        this.words = words;
        this.clinic = clinic;
        this.clock = clock;
    }

    /** What the page says. */
    enum Face {
        ASK,
        MOVED,
        CONFIRMED,
        ASKED,
        CANCELLED,
        OVER
    }

    @GetMapping("/v/{token}")
    String open(@PathVariable String token, HttpServletRequest request, HttpServletResponse response, Model model) {
        return show(token, request, response, model);
    }

    /** Where an answer was posted is no page of its own: whoever turns its language or loads it again comes back. */
    @GetMapping({"/v/{token}/yes", "/v/{token}/move"})
    String back(@PathVariable String token, HttpServletRequest request) {
        return page(token, request);
    }

    private static String page(String token, HttpServletRequest request) {
        return "redirect:/v/" + token
                + asked(request).map(language -> "?lang=" + language.tag()).orElse("");
    }

    @PostMapping("/v/{token}/yes")
    String yes(
            @PathVariable String token,
            @RequestParam int sequence,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        return answer(token, request, response, model, (holder, visit) -> visits.confirm(holder, visit, sequence));
    }

    @PostMapping("/v/{token}/move")
    String move(
            @PathVariable String token,
            @RequestParam int sequence,
            @RequestParam String wish,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        model.addAttribute("wish", wish);
        return answer(
                token, request, response, model, (holder, visit) -> visits.askToMove(holder, visit, sequence, wish));
    }

    private interface Act {
        void on(Viewer holder, VisitId visit);
    }

    private String answer(
            String token, HttpServletRequest request, HttpServletResponse response, Model model, Act act) {
        var link = links.open(Links.Purpose.ANSWER_VISIT, token);
        if (link.isEmpty()) {
            return gone(response, model);
        }
        var id = new VisitId(link.get().subject());
        var holder = holder(link.get().id(), id);
        var visit = visits.get(holder, id);
        if (face(visit) == Face.CANCELLED || face(visit) == Face.OVER) {
            return show(token, request, response, model);
        }
        try {
            act.on(holder, id);
            return page(token, request);
        } catch (Overtaken moved) {
            model.addAttribute("overtaken", true);
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        } catch (Invalid invalid) {
            model.addAttribute("problems", invalid.problems());
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        }
        return show(token, request, response, model);
    }

    private Viewer holder(java.util.UUID link, VisitId visit) {
        var person = rows.readerOf(link).flatMap(OutboxRows.Reader::person);
        return new Viewer.LinkHolder(link, visits.get(Family.MACHINE, visit).child(), person);
    }

    private String show(String token, HttpServletRequest request, HttpServletResponse response, Model model) {
        var link = links.open(Links.Purpose.ANSWER_VISIT, token);
        if (link.isEmpty()) {
            return gone(response, model);
        }
        var id = new VisitId(link.get().subject());
        // the person sees its own answer, not what another caregiver wrote
        var visit = visits.get(holder(link.get().id(), id), id);
        var reader = rows.readerOf(link.get().id())
                .orElseGet(() -> new OutboxRows.Reader(Language.EN, clinic.zone(), Optional.empty()));
        // the language asked for on the page wins over the person's own
        var language = asked(request).orElse(reader.language());
        model.addAttribute("say", words.in(language));
        model.addAttribute("token", token);
        model.addAttribute("face", face(visit));
        model.addAttribute("sequence", visit.sequence());
        model.addAttribute("place", visit.place());
        model.addAttribute("asked", visit.wish());
        model.addAttribute("date", words.longDate(language, visit.start().toLocalDate()));
        model.addAttribute("leaf", leaf(language, visit.start().toLocalDate()));
        model.addAttribute("time", wording.time(language, visit.start(), visit.zone(), reader.zone()));
        model.addAttribute("officeLine", clinic.officeLine());
        return PAGE;
    }

    private static Optional<Language> asked(HttpServletRequest request) {
        return Arrays.stream(Language.values())
                .filter(language -> language.tag().equals(request.getParameter("lang")))
                .findFirst();
    }

    /** A day as on the leaf of a calendar. */
    record Leaf(String month, int day, String weekday) {}

    private Leaf leaf(Language language, LocalDate day) {
        return new Leaf(words.shortMonth(language, day), day.getDayOfMonth(), words.shortWeekday(language, day));
    }

    private Face face(Visit visit) {
        if (visit.state() == Visit.State.CANCELLED) {
            return Face.CANCELLED;
        }
        if (visit.state() != Visit.State.BOOKED || !clock.instant().isBefore(visit.endsAt())) {
            return Face.OVER;
        }
        return switch (visit.answer()) {
            case CONFIRMED -> Face.CONFIRMED;
            case ASKED_TO_MOVE -> Face.ASKED;
            case NONE -> visit.sequence() > 0 ? Face.MOVED : Face.ASK;
        };
    }

    private String gone(HttpServletResponse response, Model model) {
        response.setStatus(HttpServletResponse.SC_NOT_FOUND);
        model.addAttribute("officeLine", clinic.officeLine());
        return "reminder/gone";
    }
}
