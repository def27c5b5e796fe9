package org.hearthway.caseload.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Device;
import org.hearthway.child.Devices;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.paper.EmergencySheet.Plan;
import org.hearthway.paper.EmergencySheet.PlanData;
import org.hearthway.paper.EmergencySheets;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** What is in the child's body, and what must be done in an emergency. */
@Route("staff/child/:child/device")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class DeviceView extends Div implements BeforeEnterObserver, HasDynamicTitle {

    private final transient Devices devices;
    private final transient EmergencySheets sheets;
    private final transient Gate gate;
    private final transient Words words;
    private final transient ClinicSettings clinic;
    private final Viewer.Person viewer;
    private final Language language;
    private final Div left = Tags.div("hw-devices");
    private final Div right = new Div();
    private transient ChildId child = new ChildId(new UUID(0, 0));

    DeviceView(
            Devices devices, EmergencySheets sheets, Gate gate, Words words, ClinicSettings clinic, SignedIn signedIn) {
        this.devices = devices;
        this.sheets = sheets;
        this.gate = gate;
        this.words = words;
        this.clinic = clinic;
        this.viewer = signedIn.require();
        this.language = viewer.language();
        addClassName("hw-worksheet");
        add(
                Tags.div("hw-desk", Tags.div("hw-cols u-side24", left, right)),
                new KeyBar().remark(say("pump.keys.written-down")));
    }

    @Override
    public String getPageTitle() {
        return say("caseload.tab.device");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        child = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.SEE_FOLDER, child);
        drawDevices();
        drawPlan();
    }

    private void drawDevices() {
        left.removeAll();
        var known = devices.of(viewer, child);
        var may = gate.allows(viewer, Action.RECORD_DEVICE, child);
        left.add(Tags.div("hw-colh", Tags.h2("", say("caseload.device.title"))));
        if (known.isEmpty()) {
            left.add(Tags.p("hw-quiet", say("caseload.device.none")));
        }
        known.forEach(device -> left.add(device(device, may)));
        if (may) {
            var add = Tags.button("plain", say("caseload.device.add"), pressed -> form(Optional.empty()));
            add.setId("device-add");
            left.add(Tags.div("", add));
        }
    }

    private Component device(Device device, boolean may) {
        var card = Tags.div("hw-sheet");
        card.add(
                Tags.h2("u-xl", say("paper.device." + device.kind())),
                Tags.span(
                        device.isInPlace() ? "hw-label ember" : "hw-label line",
                        say(device.isInPlace() ? "caseload.device.in" : "caseload.device.out")));
        device.parts()
                .forEach(part -> card.add(Tags.p(
                        "",
                        say("paper.part." + part.what()) + ": "
                                + part.removed()
                                        .map(out -> say(
                                                "paper.part.out",
                                                part.serial(),
                                                words.dateWithYear(language, part.implanted()),
                                                words.dateWithYear(language, out)))
                                        .orElseGet(() -> say(
                                                "paper.part.in",
                                                part.serial(),
                                                words.dateWithYear(language, part.implanted()))))));
        if (may) {
            card.add(Tags.button("text", say("caseload.device.change"), pressed -> form(Optional.of(device))));
        }
        return card;
    }

    private void form(Optional<Device> known) {
        drawDevices();
        left.add(new DeviceForm(words, language, known, new DeviceForm.Acts() {
            @Override
            public void save(Device.Kind kind, List<Device.Part> parts) {
                try {
                    known.ifPresentOrElse(
                            device -> devices.change(viewer, child, device.id(), parts, device.version()),
                            () -> devices.enter(viewer, child, kind, parts));
                    Told.done(say("caseload.device.saved"));
                    drawDevices();
                } catch (Overtaken overtaken) {
                    // what was typed stays; the folder shows the other's version when it is opened anew
                    Told.couldNot(say("caseload.device.overtaken"));
                }
            }

            @Override
            public void leave() {
                drawDevices();
            }
        }));
    }

    private void drawPlan() {
        right.removeAll();
        var plan = sheets.plan(viewer, child);
        right.add(new EmergencyPlanForm(
                words,
                language,
                clinic,
                plan,
                gate.allows(viewer, Action.SIGN_EMERGENCY_PLAN, child),
                data -> sign(data, plan.map(Plan::number).orElse(0L))));
    }

    private void sign(PlanData data, long seen) {
        try {
            sheets.sign(viewer, child, data, seen);
            Told.done(say("caseload.emergency.signed"));
            drawPlan();
        } catch (Overtaken overtaken) {
            // what was typed stays
            Told.couldNot(say("caseload.emergency.overtaken"));
        }
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
