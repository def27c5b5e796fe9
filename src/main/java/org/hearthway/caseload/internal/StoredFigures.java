package org.hearthway.caseload.internal;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.NeedFigures;
import org.hearthway.caseload.engine.Figure;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Lets an administrator say at which numbers a home program needs a look. */
@Service
class StoredFigures implements NeedFigures {

    /** Days that are counted, and the days within which they are. */
    private static final Map<Figure, Figure> WITHIN =
            Map.of(Figure.SORE_DAYS, Figure.SORE_WITHIN, Figure.HARD_DAYS, Figure.HARD_WITHIN);

    private final NeedsContent content;
    private final ClinicBook book;
    private final FigureRows rows;
    private final AuditTrail trail;
    private final Gate gate;
    private final Clock clock;

    StoredFigures(NeedsContent content, ClinicBook book, FigureRows rows, AuditTrail trail, Gate gate, Clock clock) {
        this.content = content;
        this.book = book;
        this.rows = rows;
        this.trail = trail;
        this.gate = gate;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Value> all(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return values();
    }

    private List<Value> values() {
        var newest = new EnumMap<Figure, Said>(Figure.class);
        rows.newest().forEach(said -> newest.put(said.figure(), said));
        return Arrays.stream(Figure.values())
                .map(figure -> {
                    var last = Optional.ofNullable(newest.get(figure));
                    return new Value(
                            figure,
                            content.book().figure(figure),
                            last.filter(
                                    said -> said.number().filter(figure::holds).isPresent()),
                            last.map(Said::version).orElse(0L));
                })
                .toList();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Said> history(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return rows.all();
    }

    @Override
    @Transactional
    public void say(Viewer viewer, Figure figure, int number, String reason, long seen) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        var value = value(figure, seen);
        var problems = new ArrayList<Problem>();
        if (!figure.holds(number)) {
            problems.add(Problem.at("number", "caseload.figure.bounds", figure.least(), figure.most()));
        } else if (number == value.counts()) {
            problems.add(Problem.at("number", "caseload.figure.same", number));
        } else {
            together(figure, number).ifPresent(problems::add);
        }
        wrong(reason).ifPresent(problems::add);
        Invalid.ifAny(problems);
        add(viewer, value, Optional.of(number), reason);
    }

    /** More days than there are days to count them in would be a rule that never holds. */
    private Optional<Problem> together(Figure figure, int number) {
        var now = book.now();
        for (var pair : WITHIN.entrySet()) {
            var days = figure == pair.getKey() ? number : now.figure(pair.getKey());
            var within = figure == pair.getValue() ? number : now.figure(pair.getValue());
            if ((figure == pair.getKey() || figure == pair.getValue()) && days > within) {
                return Optional.of(Problem.at("number", "caseload.figure.within", days, within));
            }
        }
        return Optional.empty();
    }

    @Override
    @Transactional
    public void takeBack(Viewer viewer, Figure figure, String reason, long seen) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        var value = value(figure, seen);
        var problems = new ArrayList<Problem>();
        if (value.own().isEmpty()) {
            problems.add(Problem.at("number", "caseload.figure.none"));
        } else {
            together(figure, value.shipped()).ifPresent(problems::add);
        }
        wrong(reason).ifPresent(problems::add);
        Invalid.ifAny(problems);
        add(viewer, value, Optional.empty(), reason);
    }

    private Value value(Figure figure, long seen) {
        var value = values().stream()
                .filter(one -> one.figure() == figure)
                .findFirst()
                .orElseThrow();
        if (value.version() != seen) {
            throw new Overtaken();
        }
        return value;
    }

    private static Optional<Problem> wrong(String reason) {
        var length = reason.strip().length();
        return length >= REASON_MIN && length <= REASON_MAX
                ? Optional.empty()
                : Optional.of(Problem.at("reason", "caseload.words.bounds", REASON_MIN, REASON_MAX, length));
    }

    private void add(Viewer viewer, Value value, Optional<Integer> number, String reason) {
        try {
            rows.add(new Said(
                    value.figure(),
                    value.counts(),
                    number,
                    reason.strip(),
                    account(viewer),
                    clock.instant(),
                    value.version() + 1));
        } catch (DuplicateKeyException saidAtTheSameMoment) {
            throw new Overtaken();
        }
        trail.happened(viewer, "list number changed" + ": " + value.figure());
    }

    private static AccountId account(Viewer viewer) {
        if (viewer instanceof Viewer.Person person) {
            return person.account();
        }
        throw new NotAvailable();
    }
}
