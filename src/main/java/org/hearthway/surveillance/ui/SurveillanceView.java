package org.hearthway.surveillance.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.surveillance.Check;
import org.hearthway.surveillance.Surveillance;
import org.hearthway.surveillance.Surveillance.Outlook;
import org.hearthway.surveillance.engine.Due;
import org.hearthway.words.Words;

/** Hips and spine of a child: when the next check is by which rule, what each one showed, and a form for one more. */
@Route("staff/child/:child/surveillance")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class SurveillanceView extends Div implements BeforeEnterObserver, HasDynamicTitle {

    private final transient Surveillance surveillance;
    private final transient Gate gate;
    private final transient ClinicSettings clinic;
    private final transient Clock clock;
    private final transient RuleWords say;
    private final Viewer.Person viewer;
    private final Div list = Tags.div("hw-devices");
    private final Div beside = new Div();
    private transient ChildId child = new ChildId(new UUID(0, 0));
    private boolean may;

    SurveillanceView(
            Surveillance surveillance, Gate gate, Words words, ClinicSettings clinic, Clock clock, SignedIn signedIn) {
        this.surveillance = surveillance;
        this.gate = gate;
        this.clinic = clinic;
        this.clock = clock;
        this.viewer = signedIn.require();
        this.say = new RuleWords(words, viewer.language());
        addClassName("hw-worksheet");
        add(
                Tags.div("hw-desk", Tags.div("hw-cols u-side24", list, beside)),
                new KeyBar().remark(say.say("surveillance.written-down")));
    }

    @Override
    public String getPageTitle() {
        return say.say("surveillance.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        child = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.SEE_FOLDER, child);
        may = gate.allows(viewer, Action.RECORD_SURVEILLANCE, child);
        leave();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }

    private void leave() {
        draw();
        show(Tags.p("hw-quiet", say.say(may ? "surveillance.hint" : "surveillance.read-only")));
    }

    /** Beside the list, or below it on a phone: then the form is brought into sight. */
    private void open(Component form) {
        show(form);
        form.scrollIntoView();
    }

    private void show(Component form) {
        beside.removeAll();
        beside.add(form);
    }

    private void draw() {
        list.removeAll();
        list.add(Tags.p("hw-sub", say.say("surveillance.to-confirm.why")));
        surveillance.outlook(viewer, child).forEach(this::draw);
    }

    private void draw(Outlook outlook) {
        var watched = outlook.matter().watched();
        var sheet = Tags.div("hw-sheet");
        sheet.add(
                Tags.h2("u-xl", say.say("surveillance.watched." + watched)),
                Tags.span("hw-label line", say.say("surveillance.to-confirm")));
        next(sheet, outlook);
        outlook.rule().ifPresent(rule -> {
            sheet.add(
                    Tags.p("u-mt3", say.say("surveillance.rule", outlook.level().orElseThrow(), rule.says())),
                    Tags.p("hw-sub", say.say("surveillance.source", rule.source())));
        });
        var checks = surveillance.checks(viewer, child, watched);
        if (!checks.isEmpty()) {
            sheet.add(new CheckTable(say, outlook.matter(), checks, may, check -> form(outlook, Optional.of(check))));
        }
        if (may) {
            var record = Tags.button(
                    "plain", say.say("surveillance.record." + watched), pressed -> form(outlook, Optional.empty()));
            record.setId("record-" + watched.name().toLowerCase(Locale.ROOT));
            sheet.add(Tags.div("u-row u-mt3", record));
        }
        list.add(sheet);
    }

    /** The next date with its rule, and those behind it; or why there is none. */
    private void next(Div sheet, Outlook outlook) {
        if (outlook.level().isEmpty()) {
            sheet.add(Tags.p("hw-b u-mt3", say.say("surveillance.no-level")));
            return;
        }
        var next = outlook.next();
        if (next.isEmpty()) {
            sheet.add(Tags.p("hw-b u-mt3", say.say(none(outlook))));
            return;
        }
        var due = next.get();
        var line = Tags.p("u-mt3", "");
        line.add(Tags.span("hw-b u-lg", say.when(due)));
        if (due.by().isBefore(today())) {
            line.add(Tags.span("hw-label ember u-ml3", say.say("surveillance.passed")));
        }
        sheet.add(line, Tags.p("", say.why(due)));
        if (outlook.last().isEmpty()) {
            sheet.add(Tags.p("", say.say("surveillance.none-recorded")));
        }
        var later = outlook.ahead().stream().skip(1).map(Due::by).map(say::day).toList();
        if (!later.isEmpty()) {
            sheet.add(Tags.p("hw-sub", say.say("surveillance.then", say.words().list(say.language(), later))));
        }
    }

    private static String none(Outlook outlook) {
        if (outlook.rule().isEmpty()) {
            return "surveillance.no-rule";
        }
        return outlook.last().isEmpty() ? "surveillance.from-first" : "surveillance.no-more";
    }

    private void form(Outlook outlook, Optional<Check> known) {
        open(new CheckForm(say, outlook.matter(), today(), known, new CheckForm.Acts() {
            @Override
            public void save(Check.CheckData data) {
                settle(() -> known.ifPresentOrElse(
                        check -> correct(outlook, check, Optional.of(data)),
                        () -> surveillance.record(viewer, child, data, outlook.seen())));
            }

            @Override
            public void takeBack() {
                known.ifPresent(check -> settle(() -> correct(outlook, check, Optional.empty())));
            }

            @Override
            public void leave() {
                SurveillanceView.this.leave();
            }
        }));
    }

    private void correct(Outlook outlook, Check check, Optional<Check.CheckData> data) {
        surveillance.correct(viewer, child, outlook.matter().watched(), check.number(), data, outlook.seen());
    }

    private void settle(Runnable act) {
        try {
            act.run();
            Told.done(say.say("surveillance.saved"));
            leave();
        } catch (Overtaken overtaken) {
            // the form keeps what was typed; the list beside it shows what came in between
            Told.couldNot(say.say("surveillance.overtaken"));
            draw();
        }
    }
}
