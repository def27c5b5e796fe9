package org.hearthway.content.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.content.ContentKind;
import org.hearthway.content.FamilyText;
import org.hearthway.content.SignOff;
import org.hearthway.content.events.TextDecided;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Lazy;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

@Service
class ClinicSignOff implements SignOff {

    private final DecisionRows decisions;
    private final OwnWordRows ownWords;
    private final SignOffRules rules;
    private final Gate gate;
    private final ObjectProvider<ContentKind> kinds;
    private final Clock clock;
    private final ApplicationEventPublisher events;
    private final boolean demo;

    ClinicSignOff(
            DecisionRows decisions,
            OwnWordRows ownWords,
            SignOffRules rules,
            @Lazy Gate gate,
            ObjectProvider<ContentKind> kinds,
            Clock clock,
            ApplicationEventPublisher events,
            @Value("${hearthway.kind}") String kind) {
        this.decisions = decisions;
        this.ownWords = ownWords;
        this.rules = rules;
        this.gate = gate;
        this.kinds = kinds;
        this.clock = clock;
        this.events = events;
        this.demo = kind.equals("demo");
    }

    @Override
    public boolean isShown(Item item) {
        return shownAmong(List.of(item)).contains(item);
    }

    @Override
    public Set<Item> shownAmong(List<Item> items) {
        var shown = new HashSet<>(items);
        if (!demo && !shown.isEmpty()) {
            var newest = decisions.newest();
            shown.removeIf(item -> !isAccepted(newest.get(item)));
        }
        return shown;
    }

    private static boolean isAccepted(@org.jspecify.annotations.Nullable Decision newest) {
        return newest != null && newest.decided() == Decided.ACCEPTED;
    }

    @Override
    public Map<Integer, Bilingual> ownWords(Item item) {
        return ownWords.now(item);
    }

    @Override
    public List<FamilyText> all(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return kinds.stream()
                .flatMap(kind -> kind.familyTexts().stream())
                .sorted(Comparator.comparing((FamilyText text) -> text.item().kind())
                        .thenComparing(text -> text.title().en()))
                .toList();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Decision> decisions(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return decisions.all();
    }

    @Override
    @Transactional(readOnly = true)
    public List<OwnWords> allOwnWords(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return ownWords.all();
    }

    @Override
    public Optional<LocalDate> dueAgain(Viewer viewer, FamilyText text, Optional<LocalDate> accepted) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return rules.dueAgain(text.provenance(), accepted);
    }

    @Override
    @Transactional
    public void accept(Viewer viewer, List<Item> items) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        var newest = decisions.newest();
        var asked = new HashSet<>(items);
        asked.removeIf(item -> isAccepted(newest.get(item)));
        if (asked.stream().anyMatch(newest::containsKey)) {
            throw new Overtaken();
        }
        asked.forEach(item -> add(new Decision(item, 1, Decided.ACCEPTED, "", viewer.tag(), clock.instant())));
        if (asked.size() == 1) {
            tell(viewer, "text accepted", asked.iterator().next());
        } else if (!asked.isEmpty()) {
            events.publishEvent(new TextDecided(viewer, "texts accepted: " + asked.size()));
        }
    }

    @Override
    @Transactional
    public void accept(Viewer viewer, Item item, int seen) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        decide(viewer, item, Decided.ACCEPTED, "", seen);
        tell(viewer, "text accepted", item);
    }

    @Override
    @Transactional
    public void sendBack(Viewer viewer, Item item, String reason, int seen) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        var why = reason.replace("\u0000", "").strip();
        if (why.length() < REASON_MIN || why.length() > REASON_MAX) {
            throw new Invalid(Problem.at("reason", "content.problem.reason", REASON_MIN, REASON_MAX));
        }
        decide(viewer, item, Decided.SENT_BACK, why, seen);
        tell(viewer, "text sent back", item);
    }

    private void decide(Viewer viewer, Item item, Decided decided, String reason, int seen) {
        find(viewer, item);
        var newest = decisions.newest().get(item);
        if ((newest == null ? 0 : newest.number()) != seen) {
            throw new Overtaken();
        }
        add(new Decision(item, seen + 1, decided, reason, viewer.tag(), clock.instant()));
    }

    private void add(Decision decision) {
        try {
            decisions.add(decision);
        } catch (DuplicateKeyException somebodyWasFirst) {
            throw new Overtaken();
        }
    }

    @Override
    @Transactional
    public void reword(Viewer viewer, Item item, int place, String en, String es, int seen) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        var original = piece(viewer, item, place);
        var now = ownWords.now(item).getOrDefault(place, original);
        Invalid.ifAny(rules.problems(en.strip(), es.strip(), now));
        var words = new Bilingual(en.strip(), es.strip());
        Invalid.ifAny(
                kindOf(item).flatMap(kind -> kind.problems(words).stream()).toList());
        write(new OwnWords(item, place, seen + 1, Optional.of(words), viewer.tag(), clock.instant()));
        tell(viewer, "text reworded", item);
    }

    @Override
    @Transactional
    public void withdraw(Viewer viewer, Item item, int place, int seen) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        piece(viewer, item, place);
        if (!ownWords.now(item).containsKey(place)) {
            throw new Overtaken();
        }
        write(new OwnWords(item, place, seen + 1, Optional.empty(), viewer.tag(), clock.instant()));
        tell(viewer, "text back to its own words", item);
    }

    private void write(OwnWords own) {
        var newest = ownWords.all().stream()
                .filter(each -> each.item().equals(own.item()) && each.place() == own.place())
                .mapToInt(OwnWords::number)
                .max()
                .orElse(0);
        if (newest + 1 != own.number()) {
            throw new Overtaken();
        }
        try {
            ownWords.add(own);
        } catch (DuplicateKeyException somebodyWasFirst) {
            throw new Overtaken();
        }
    }

    private Stream<ContentKind> kindOf(Item item) {
        return kinds.stream().filter(kind -> kind.place().equals(item.kind()));
    }

    private Bilingual piece(Viewer viewer, Item item, int place) {
        var pieces = find(viewer, item).pieces();
        if (place < 0 || place >= pieces.size()) {
            throw new NotAvailable();
        }
        return Objects.requireNonNull(pieces.get(place));
    }

    private FamilyText find(Viewer viewer, Item item) {
        return all(viewer).stream()
                .filter(text -> text.item().equals(item))
                .findFirst()
                .orElseThrow(NotAvailable::new);
    }

    private void tell(Viewer viewer, String what, Item item) {
        events.publishEvent(
                new TextDecided(viewer, what + ": " + item.kind() + "/" + item.id() + ", version " + item.version()));
    }
}
