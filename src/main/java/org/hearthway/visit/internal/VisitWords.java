package org.hearthway.visit.internal;

import org.hearthway.base.Bilingual;
import org.hearthway.visit.Visit;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** What the family is told about a visit. */
@Component
class VisitWords {

    private final Words words;

    VisitWords(Words words) {
        this.words = words;
    }

    Bilingual booked(Visit visit) {
        return told("visit.told.booked", visit);
    }

    Bilingual moved(Visit visit) {
        return told("visit.told.moved", visit);
    }

    Bilingual cancelled(Visit visit) {
        return told("visit.told.cancelled", visit);
    }

    private Bilingual told(String key, Visit visit) {
        return words.both(
                key,
                visit.kind().name(),
                visit.start().toLocalDate(),
                visit.start().toLocalTime());
    }
}
