package org.hearthway.browser;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.access.Links;
import org.hearthway.access.NewAccount;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.testing.People;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits;

/** The pages of a demo clinic that need no sign-in, in each state that a person can meet them in. */
final class PlainPages {

    private static final Viewer MACHINE = new Viewer.Machine("tour");
    private static final Viewer DESK = People.with(Role.COORDINATOR);

    private final RunningClinic clinic;
    private final Visits visits;
    private final ChildId child;
    private LocalDateTime slot;

    PlainPages(RunningClinic clinic) {
        this.clinic = clinic;
        this.visits = clinic.part(Visits.class);
        this.child = new Tour(clinic).child("Juno");
        // a Tuesday some weeks ahead, an hour for each visit
        this.slot = LocalDateTime.ofInstant(clinic.clock().instant(), People.ZONE)
                .plusWeeks(5)
                .with(java.time.temporal.TemporalAdjusters.next(java.time.DayOfWeek.TUESDAY))
                .withHour(8)
                .withMinute(0)
                .truncatedTo(java.time.temporal.ChronoUnit.MINUTES);
    }

    /** Where each page is, by a short name for it. Books visits and answers them, invites people. */
    Map<String, String> places() {
        var places = new LinkedHashMap<String, String>();
        places.put("sign-in", "/sign-in");
        places.put("sign-in-wrong", "/sign-in?wrong");
        places.put("sign-in-wait", "/sign-in?wait");
        places.put("sign-in-ready", "/sign-in?ready");
        places.put("call", "/call");
        places.put("call-es", "/call?lang=es");
        places.put("welcome", welcome(Language.EN));
        places.put("welcome-es", welcome(Language.ES));
        places.put("welcome-closed", "/welcome/nothing-here");
        places.put("answer", answer(visit -> {}));
        places.put("answer-es", answer(visit -> {}) + "?lang=es");
        places.put("answer-moved", answer(visit -> visits.move(DESK, visit.id(), next(), visit.version())));
        places.put("answer-confirmed", answer(visit -> visits.confirm(parent(), visit.id(), visit.sequence())));
        places.put(
                "answer-asked",
                answer(visit -> visits.askToMove(parent(), visit.id(), visit.sequence(), "Any afternoon after three")));
        places.put("answer-cancelled", answer(visit -> visits.cancel(DESK, visit.id(), visit.version())));
        places.put("answer-over", link(visits.past(MACHINE, child, 1).get(0).id()));
        places.put("answer-closed", "/v/nothing-here");
        places.put("error", "/look/nothing-here.css");
        return places;
    }

    private interface Then {
        void with(Visit visit);
    }

    private Viewer parent() {
        return new Viewer.LinkHolder(java.util.UUID.randomUUID(), child);
    }

    private LocalDateTime next() {
        slot = slot.plusHours(1);
        return slot;
    }

    private String answer(Then then) {
        var id = visits.book(DESK, child, new Visits.Booking("therapy", next(), 45, "Room 3", Optional.empty()));
        then.with(visits.get(MACHINE, id));
        return link(id);
    }

    private String link(VisitId visit) {
        var links = clinic.part(Links.class);
        var link = links.create(
                Links.Purpose.ANSWER_VISIT,
                visit.value(),
                clinic.clock().instant().plus(Duration.ofDays(90)));
        return "/v/" + links.token(link.id());
    }

    private String welcome(Language language) {
        var url = clinic.part(Accounts.class)
                .invite(
                        People.with(Role.ADMINISTRATOR),
                        new NewAccount(
                                "Ines Duarte", People.freshEmail(), "", Set.of(Role.CAREGIVER), language, People.ZONE))
                .url();
        return url.substring(clinic.url().length());
    }
}
