package org.hearthway.reminder.internal;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.reminder.Outbox.Channel;
import org.hearthway.visit.VisitId;

/**
 * A message or call as planned.
 *
 * @param idem names the reminder once and for all; a second one of that name is the same reminder
 * @param cause the visit or refill that it is for
 * @param person to whom
 * @param zone of the person's own clock
 * @param about the kind of visit
 * @param textId the text it was made from
 * @param occasion wall time of the visit, or the last day at its hour
 * @param occasionZone the zone of that wall time
 * @param body the words, with a gap where the link stands
 * @param usefulUntil the last instant at which it helps; empty for never too late
 */
record Draft(
        String idem,
        String cause,
        ChildId child,
        AccountId person,
        Optional<VisitId> visit,
        Channel channel,
        Language language,
        ZoneId zone,
        String about,
        String textId,
        LocalDateTime occasion,
        ZoneId occasionZone,
        boolean urgent,
        String subject,
        String body,
        Instant due,
        Optional<Instant> usefulUntil) {}
