package org.hearthway.paper.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.access.Links;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Device;
import org.hearthway.child.Devices;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.paper.EmergencySheet;
import org.hearthway.paper.EmergencySheet.Plan;
import org.hearthway.paper.EmergencySheet.PlanData;
import org.hearthway.paper.EmergencySheets;
import org.hearthway.paper.events.EmergencyPlanSigned;
import org.hearthway.pump.Pumps;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Puts the sheet together from what the features know at that moment; nothing on it is stored twice. */
@Service
class CompiledSheets implements EmergencySheets {

    private static final int LINE_MOST = 60;
    private static final int CATHETER_MOST = 200;
    private static final int PLAN_MOST = 700;
    private static final int PLAN_LINES = 13;
    private static final int LINE_HOLDS = 54;

    private final ChildRegister children;
    private final Devices devices;
    private final Pumps pumps;
    private final WarningKind warnings;
    private final PlanRows plans;
    private final Links links;
    private final AuditTrail trail;
    private final Gate gate;
    private final ClinicSettings clinic;
    private final SheetRules rules;
    private final PaperCount papers;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    CompiledSheets(
            ChildRegister children,
            Devices devices,
            Pumps pumps,
            WarningKind warnings,
            PlanRows plans,
            Links links,
            AuditTrail trail,
            Gate gate,
            ClinicSettings clinic,
            SheetRules rules,
            PaperCount papers,
            Clock clock,
            ApplicationEventPublisher events) {
        this.children = children;
        this.devices = devices;
        this.pumps = pumps;
        this.warnings = warnings;
        this.plans = plans;
        this.links = links;
        this.trail = trail;
        this.gate = gate;
        this.clinic = clinic;
        this.rules = rules;
        this.papers = papers;
        this.clock = clock;
        this.events = events;
    }

    @Override
    @Transactional(readOnly = true)
    public EmergencySheet sheet(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var now = clock.instant();
        var inPlace =
                devices.of(viewer, child).stream().filter(Device::isInPlace).collect(Collectors.toList());
        var kinds = inPlace.stream().map(Device::kind).collect(Collectors.toSet());
        var pump = kinds.contains(Device.Kind.PUMP);
        Optional<Pumps.Running> running = pump ? pumps.running(viewer, child) : Optional.empty();
        return new EmergencySheet(
                children.get(viewer, child),
                now,
                LocalDate.ofInstant(now, clinic.zone()),
                inPlace,
                running.filter(known -> known.setting().isPresent()),
                running.filter(known -> known.setting().isEmpty()).isPresent(),
                pump ? pumps.refill(viewer, child) : Optional.empty(),
                plans.newest(child),
                warnings.about(kinds));
    }

    @Override
    @Transactional
    public Address open(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var link = links.create(
                Links.Purpose.EMERGENCY_SHEET, child.value(), clock.instant().plus(rules.linkLife()));
        papers.belongs(link.id(), viewer);
        trail.looked(viewer, child, "emergency sheet link");
        return new Address(EmergencyDoor.PLACE + links.token(link.id()), link.expires());
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Plan> plan(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return plans.newest(child);
    }

    @Override
    @Transactional
    public Plan sign(Viewer viewer, ChildId child, PlanData data, long seen) {
        gate.require(viewer, Action.SIGN_EMERGENCY_PLAN, child);
        if (!(viewer instanceof Viewer.Person person)) {
            throw new NotAvailable();
        }
        if (plans.newest(child).map(Plan::number).orElse(0L) != seen) {
            throw new Overtaken();
        }
        var stripped = new PlanData(
                data.surgeonLine().strip(),
                data.catheter().strip(),
                data.withdrawal().strip(),
                data.storm().strip());
        Invalid.ifAny(problems(stripped));
        var plan = new Plan(
                seen + 1,
                stripped,
                person.account(),
                person.name(),
                clock.instant().truncatedTo(ChronoUnit.MICROS));
        plans.add(child, plan);
        events.publishEvent(new EmergencyPlanSigned(child, viewer, plan.at()));
        return plan;
    }

    private static List<Problem> problems(PlanData data) {
        var problems = new ArrayList<Problem>();
        if (data.surgeonLine().length() > LINE_MOST
                || data.surgeonLine().chars().noneMatch(Character::isDigit)) {
            problems.add(Problem.at("surgeonLine", "paper.problem.line", LINE_MOST));
        }
        if (data.catheter().length() > CATHETER_MOST) {
            problems.add(Problem.at("catheter", "paper.problem.catheter", CATHETER_MOST));
        }
        checkPlan("withdrawal", data.withdrawal(), problems);
        checkPlan("storm", data.storm(), problems);
        if (data.withdrawal().isEmpty() && data.storm().isEmpty()) {
            problems.add(Problem.at("withdrawal", "paper.problem.plan.missing"));
        }
        return problems;
    }

    private static void checkPlan(String field, String plan, List<Problem> problems) {
        if (plan.length() > PLAN_MOST) {
            problems.add(Problem.at(field, "paper.problem.plan", PLAN_MOST));
        } else if (linesOnPaper(plan) > PLAN_LINES) {
            problems.add(Problem.at(field, "paper.problem.plan.lines", PLAN_LINES, linesOnPaper(plan)));
        }
    }

    /** As they stand beside the other plan, where a line holds about half of what the page is wide. */
    private static int linesOnPaper(String plan) {
        return plan.lines()
                .mapToInt(line -> Math.max(1, (line.length() + LINE_HOLDS - 1) / LINE_HOLDS))
                .sum();
    }
}
