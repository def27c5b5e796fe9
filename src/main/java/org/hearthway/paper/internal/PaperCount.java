package org.hearthway.paper.internal;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.Viewer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.stereotype.Component;

/**
 * Counts the PDFs that are made, by whose link it is: printing is the one costly thing that a link does. The page itself
 * always opens. In memory, as links live for hours only; a link of before a restart counts by itself.
 */
@Component
@EnableConfigurationProperties(SheetRules.class)
class PaperCount {

    private static final Logger LOG = LoggerFactory.getLogger(PaperCount.class);
    private static final int KNOWN = 10_000;

    private final Map<UUID, String> makers = bounded();
    private final Map<String, Deque<Instant>> made = bounded();
    private final SheetRules rules;
    private final Clock clock;

    PaperCount(SheetRules rules, Clock clock) {
        this.rules = rules;
        this.clock = clock;
    }

    private static <K, V> Map<K, V> bounded() {
        return new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > KNOWN;
            }
        };
    }

    /** Remembers whose link it is. */
    synchronized void belongs(UUID link, Viewer maker) {
        makers.put(link, maker.tag());
    }

    /** Until when no further PDF is made for this link; empty when one may be. */
    synchronized Optional<Instant> restsUntil(UUID link) {
        var lately = lately(link);
        return lately.size() < rules.papers()
                ? Optional.empty()
                : Optional.of(lately.getFirst().plus(rules.papersWithin()));
    }

    /** Counts one PDF more; false when it must not be made now. */
    synchronized boolean take(UUID link) {
        if (restsUntil(link).isPresent()) {
            LOG.warn("emergency sheets are printed too often by the links of {}", whose(link));
            return false;
        }
        lately(link).addLast(clock.instant());
        return true;
    }

    private Deque<Instant> lately(UUID link) {
        var times = made.computeIfAbsent(whose(link), name -> new ArrayDeque<>());
        var since = clock.instant().minus(rules.papersWithin());
        while (!times.isEmpty() && !times.getFirst().isAfter(since)) {
            times.removeFirst();
        }
        return times;
    }

    private String whose(UUID link) {
        return Objects.requireNonNullElseGet(makers.get(link), link::toString);
    }
}
