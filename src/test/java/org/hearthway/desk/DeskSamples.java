package org.hearthway.desk;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.content.Provenance;
import org.hearthway.reminder.Outbox;
import org.hearthway.reminder.Outbox.Message;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.VisitKind;

/** Messages and visits that tests begin from. */
public final class DeskSamples {

    static final ZoneId ZONE = ZoneId.of("America/New_York");

    /** Thursday, March 12, 2026, 10:00 at the clinic. */
    public static final Instant NOW = Instant.parse("2026-03-12T14:00:00Z");

    static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    static final ChildId CHILD = new ChildId(new UUID(0, 1));

    private static final Provenance UNREVIEWED =
            new Provenance("common practice, no source", 1, Optional.empty(), Optional.empty());

    private DeskSamples() {}

    static VisitId id(String name) {
        return new VisitId(UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)));
    }

    static VisitKind kind(String id) {
        return new VisitKind(
                id,
                Bilingual.same(id),
                45,
                Bilingual.same("nurse"),
                List.of(),
                List.of(),
                false,
                java.util.Set.of(),
                UNREVIEWED);
    }

    static Visit visit(String name, LocalDateTime start, Visit.Answer answer) {
        return visit(name, "check", start, Optional.empty(), answer, Visit.State.BOOKED);
    }

    static Visit visit(
            String name,
            String kind,
            LocalDateTime start,
            Optional<String> purpose,
            Visit.Answer answer,
            Visit.State state) {
        return new Visit(id(name), CHILD, kind(kind), start, ZONE, 45, "", purpose, answer, "", state, 1, 1);
    }

    /** A mail, or a call when the state is one of a call. */
    public static Message message(String name, Optional<String> visit, Outbox.State state, Instant due) {
        return new Message(
                UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)),
                CHILD,
                new AccountId(new UUID(0, 2)),
                "Parent",
                "parent@family.example",
                state == Outbox.State.TO_CALL || state == Outbox.State.CALLED
                        ? Outbox.Channel.CALL
                        : Outbox.Channel.MAIL,
                Language.EN,
                ZONE,
                visit.map(DeskSamples::id),
                "",
                "subject",
                "body",
                due,
                state,
                1,
                "",
                false,
                1);
    }
}
