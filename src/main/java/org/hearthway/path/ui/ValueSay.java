package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Span;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import org.hearthway.access.Account;
import org.hearthway.base.AccountId;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.parts.Tags;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.internal.GapWords;
import org.hearthway.path.internal.ValueWords;
import org.hearthway.words.Words;

/** Says values, dates and names for the administrator. */
final class ValueSay {

    /** What the words are made of. */
    record Parts(Words words, ValueWords values, GapWords gaps, Language language, ZoneId zone) {}

    private final Parts parts;
    private Map<AccountId, Account> people = Map.of();

    ValueSay(Parts parts) {
        this.parts = parts;
    }

    /** Names those who changed something. */
    void knows(Map<AccountId, Account> accounts) {
        people = Map.copyOf(accounts);
    }

    Words words() {
        return parts.words();
    }

    Language language() {
        return parts.language();
    }

    String say(String key, Object... args) {
        return parts.words().say(parts.language(), key, args);
    }

    String in(Bilingual name) {
        return name.in(parts.language());
    }

    /** Where a value comes from; what has no source says so in the reader's language. */
    String source(String source) {
        return say("path.values.source", source.equals(Plans.NO_SOURCE) ? say("path.no-source") : source);
    }

    String amount(Amount amount) {
        return parts.values().say(parts.language(), amount);
    }

    String date(LocalDate day) {
        return parts.words().dateWithYear(parts.language(), day);
    }

    String day(Instant at) {
        return date(LocalDate.ofInstant(at, parts.zone()));
    }

    /** When and by whom. */
    String since(Instant at, Optional<AccountId> by) {
        var who = by.map(people::get).map(Account::name).orElseGet(() -> say("path.decided.machine"));
        return say("path.values.since", day(at), who);
    }

    /** By how much a date moves, in words. */
    String moved(LocalDate from, LocalDate to) {
        var days = ChronoUnit.DAYS.between(from, to);
        var gap = parts.gaps().say(parts.language(), Period.ofDays((int) Math.abs(days)));
        return say(days < 0 ? "path.values.earlier" : "path.values.later", gap);
    }

    /** A date struck and the one in its place. */
    Component change(LocalDate from, LocalDate to) {
        return change(date(from), date(to));
    }

    /** What was, struck, and what is. */
    Component change(String from, String to) {
        var was = new com.vaadin.flow.dom.Element("s").setText(from);
        was.setAttribute("class", "u-thin");
        var both = new Span();
        both.addClassName("hw-was-is");
        both.getElement().appendChild(was, com.vaadin.flow.dom.Element.createText(" "));
        both.add(Tags.span("hw-b", to));
        return both;
    }
}
