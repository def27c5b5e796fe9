package org.hearthway.caseload.ui;

import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs.Item;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.caseload.ui.NeedWords.Why;
import org.hearthway.path.PathDevices;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Template;
import org.hearthway.visit.VisitKind;
import org.hearthway.visit.Visits;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Puts into words what a child's path waits for. */
@Component
class PathNeedWords {

    private final Words words;
    private final Plans plans;
    private final PathDevices devices;
    private final Visits visits;

    PathNeedWords(Words words, Plans plans, PathDevices devices, Visits visits) {
        this.words = words;
        this.plans = plans;
        this.devices = devices;
        this.visits = visits;
    }

    /** What an item's subject names: the path, a stage of it, and the stage that waits for that one or the visit. */
    private record Subject(Template path, String stage, String other, Optional<Plan> plan) {

        Bilingual name(String point) {
            return path.stage(point.split("/", 2)[0]).map(Template.Stage::name).orElse(Bilingual.same(point));
        }

        Optional<Plan.Planned> planned() {
            return plan.flatMap(known -> known.stage(stage));
        }
    }

    private Optional<Subject> subject(Viewer viewer, Item item) {
        var rule = item.cause().rule();
        boolean two = rule == Rule.STAGE_WAITS || rule == Rule.STAGE_VISIT;
        var parts = item.cause().subject().split("/", two ? 3 : 2);
        return plans.pathways().stream()
                .filter(path -> path.id().equals(parts[0]))
                .findFirst()
                .map(path -> new Subject(path, parts[1], two ? parts[2] : "", plan(viewer, item, path)));
    }

    private Optional<Plan> plan(Viewer viewer, Item item, Template path) {
        return plans.plans(viewer, item.child()).stream()
                .map(Plans.ChildPlan::plan)
                .filter(plan -> plan.template().id().equals(path.id()))
                .findFirst();
    }

    Why why(Viewer.Person viewer, Item item, LocalDate today) {
        // a path that the clinic no longer has leaves its identifiers
        return subject(viewer, item)
                .map(subject -> why(viewer.language(), item, subject, today))
                .orElseGet(() -> new Why(item.cause().subject(), "", ""));
    }

    private Why why(Language language, Item item, Subject subject, LocalDate today) {
        var cause = item.cause();
        var path = subject.path().name();
        var stage = subject.name(subject.stage());
        var day = day(language, cause.day(), today);
        return switch (cause.rule()) {
            case STAGE_WAITS -> {
                var other = subject.name(subject.other());
                yield new Why(
                        words.say(language, "caseload.stage-waits", stage),
                        "",
                        words.say(
                                language,
                                cause.day().isBefore(today)
                                        ? "caseload.stage-waits.past"
                                        : "caseload.stage-waits.below",
                                path,
                                other,
                                day));
            }
            case STAGE_NO_DAY ->
                new Why(
                        words.say(language, "caseload.stage-no-day", stage),
                        "",
                        subject.planned()
                                .filter(planned -> planned.clash().isPresent())
                                .flatMap(planned -> subject.plan().map(plan -> plans.why(plan, planned)))
                                .orElse(path)
                                .in(language));
            case STAGE_VISIT -> visit(language, item, subject, today);
            default ->
                new Why(
                        words.say(language, "caseload.stage-late", stage),
                        "",
                        words.say(language, "caseload.stage-late.below", path, day));
        };
    }

    /** Of a decision that stands no longer nothing is left to say but that it was one of a device. */
    Why device(Viewer.Person viewer, Item item, LocalDate today) {
        var language = viewer.language();
        return devices.behind(viewer, item.child()).stream()
                .filter(behind -> item.cause().subject().equals(String.valueOf(behind.decision())))
                .findFirst()
                .map(behind -> new Why(
                        words.say(language, "caseload.device-behind." + behind.fate()),
                        "",
                        words.say(
                                language,
                                "caseload.device-behind.below",
                                behind.path(),
                                behind.stage(),
                                day(language, behind.day(), today),
                                behind.outcome())))
                .orElseGet(() -> new Why(words.say(language, "caseload.device-behind"), "", ""));
    }

    private Why visit(Language language, Item item, Subject subject, LocalDate today) {
        var until = item.cause().day();
        boolean over = until.isBefore(today);
        var need = subject.other().split("/", 2)[0];
        var kind = subject.path().stage(subject.stage()).stream()
                .flatMap(stage -> stage.visits().stream())
                .filter(visit -> visit.id().equals(need))
                .map(visit -> kind(visit.kind()))
                .findFirst()
                .orElse(Bilingual.same(need));
        var from = subject.plan().stream()
                .flatMap(plan -> plan.stages().stream())
                .flatMap(stage -> stage.visits().stream())
                .filter(window -> window.purpose().equals(item.cause().subject()))
                .map(Plan.VisitWindow::from)
                .findFirst()
                .orElse(until);
        var days = from.equals(until)
                ? words.say(language, "caseload.day", day(language, until, today))
                : words.say(language, "caseload.days", day(language, from, today), day(language, until, today));
        return new Why(
                words.say(language, over ? "caseload.stage-visit.over" : "caseload.stage-visit", kind),
                "",
                words.say(
                        language,
                        over ? "caseload.stage-visit.over.below" : "caseload.stage-visit.below",
                        subject.path().name(),
                        subject.name(subject.stage()),
                        days));
    }

    /** A day of this year by its weekday, any other with its year. */
    private String day(Language language, LocalDate day, LocalDate today) {
        return day.getYear() == today.getYear() ? words.date(language, day) : words.dateWithYear(language, day);
    }

    private Bilingual kind(String id) {
        return visits.kinds().stream()
                .filter(known -> known.id().equals(id))
                .map(VisitKind::name)
                .findFirst()
                .orElse(Bilingual.same(id));
    }

    /** Who is responsible for the stage that an item is about. */
    Optional<String> responsible(Viewer.Person viewer, Item item) {
        return item.cause().rule() == Rule.STAGE_VISIT
                ? Optional.empty()
                : subject(viewer, item)
                        .flatMap(subject -> subject.path().stage(subject.stage().split("/", 2)[0]))
                        .map(stage -> words.say(
                                viewer.language(),
                                "caseload.responsible." + stage.who().name()));
    }
}
