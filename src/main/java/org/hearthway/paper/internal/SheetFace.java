package org.hearthway.paper.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.base.Language;
import org.hearthway.child.Device;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.paper.EmergencySheet;
import org.hearthway.paper.EmergencySheet.Plan;
import org.hearthway.paper.EmergencySheet.Weight;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Refill;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.words.Words;

/**
 * A sheet in words, in the order in which a stranger needs them: who, whom to call, what must never be done, the plan,
 * the device, what else is known.
 *
 * @param who name, birth date and age
 * @param calls telephone lines
 * @param never prohibitions
 * @param dangers how dangers show themselves
 * @param plans titles and texts of the signed plan
 * @param signed who signed the plan and when; empty without one
 * @param device what is in the body
 * @param facts drug and dose of a pump, and what else is known of the child
 * @param allergies across the whole page, for they can be many
 * @param made when the sheet was put together
 */
record SheetFace(
        String who,
        String born,
        List<Line> calls,
        List<String> never,
        List<String> dangers,
        List<Line> plans,
        String signed,
        List<Line> device,
        List<Line> facts,
        Line allergies,
        String made) {

    private static final int DOSE_PLACES = 3;

    /**
     * One line.
     *
     * @param unsure whether the value says that something is not known or not confirmed
     */
    record Line(String name, String value, boolean unsure) {}

    static SheetFace of(EmergencySheet sheet, Words words, Language language, ClinicSettings clinic) {
        return new Writer(sheet, words, language, clinic).write();
    }

    /** Writes one sheet. */
    private record Writer(EmergencySheet sheet, Words words, Language language, ClinicSettings clinic) {

        SheetFace write() {
            var child = sheet.child();
            return new SheetFace(
                    child.fullName(),
                    say("paper.born", date(child.data().birthDate()), child.ageOn(sheet.today())),
                    calls(),
                    warnings(Weight.NEVER, "paper.never.none"),
                    warnings(Weight.DANGER, "paper.danger.none"),
                    plans(),
                    sheet.plan()
                            .map(plan -> say("paper.signed", plan.signedByName(), date(day(plan.at()))))
                            .orElse(""),
                    device(),
                    facts(),
                    allergies(),
                    say("paper.made", date(sheet.today()), time(sheet.made())));
        }

        private List<Line> calls() {
            var lines = new ArrayList<Line>();
            lines.add(sheet.plan()
                    .map(plan -> sure("paper.call.surgeon", plan.data().surgeonLine()))
                    .orElseGet(() -> unsure("paper.call.surgeon", "paper.call.surgeon.none")));
            lines.add(sure("paper.call.urgent", clinic.urgentLine()));
            lines.add(sure("paper.call.office", clinic.officeLine()));
            return lines;
        }

        private List<String> warnings(Weight weight, String none) {
            var some = sheet.warnings().stream()
                    .filter(warning -> warning.weight() == weight)
                    .map(warning -> warning.says().in(language))
                    .collect(Collectors.toList());
            if (some.isEmpty() && !sheet.devices().isEmpty()) {
                some.add(say(none));
            }
            return some;
        }

        private List<Line> plans() {
            var lines = new ArrayList<Line>();
            plan(lines, Device.Kind.PUMP, "paper.plan.withdrawal", data -> data.withdrawal());
            plan(lines, Device.Kind.STIMULATOR, "paper.plan.storm", data -> data.storm());
            return lines;
        }

        /** A plan that is signed is shown; one that a device in place asks for and that nobody signed is named as missing. */
        private void plan(
                List<Line> lines,
                Device.Kind kind,
                String key,
                java.util.function.Function<EmergencySheet.PlanData, String> text) {
            var signed = sheet.plan().map(Plan::data).map(text).filter(words -> !words.isEmpty());
            if (signed.isPresent()) {
                lines.add(sure(key, signed.get()));
            } else if (sheet.devices().stream().anyMatch(device -> device.kind() == kind)) {
                lines.add(unsure(key, "paper.plan.none"));
            }
        }

        private List<Line> device() {
            var lines = new ArrayList<Line>();
            if (sheet.devices().isEmpty()) {
                lines.add(unsure("paper.device", "paper.device.none"));
            }
            sheet.devices().forEach(device -> {
                lines.add(sure("paper.device", say("paper.device." + device.kind())));
                device.parts()
                        .forEach(part -> lines.add(new Line(
                                say("paper.part." + part.what()),
                                part.removed()
                                        .map(out ->
                                                say("paper.part.out", part.serial(), date(part.implanted()), date(out)))
                                        .orElseGet(() -> say("paper.part.in", part.serial(), date(part.implanted()))),
                                false)));
            });
            sheet.plan()
                    .map(plan -> plan.data().catheter())
                    .filter(text -> !text.isEmpty())
                    .ifPresent(text -> lines.add(sure("paper.catheter", text)));
            return lines;
        }

        private void pump(List<Line> lines) {
            var none = sheet.unconfirmed() ? "paper.unconfirmed" : "paper.unknown";
            lines.add(sure("paper.drug", say("paper.drug.baclofen")));
            lines.add(sheet.setting()
                    .flatMap(Pumps.Running::setting)
                    .map(setting -> sure(
                            "paper.strength",
                            say(
                                    "paper.strength.is",
                                    setting.strength().microgramsPerMillilitre().toPlainString())))
                    .orElseGet(() -> unsure("paper.strength", none)));
            lines.add(sheet.setting()
                    .flatMap(running ->
                            running.setting().map(setting -> sure("paper.dose", dose(setting, running.on()))))
                    .orElseGet(() -> unsure("paper.dose", none)));
            var refill = sheet.fill();
            var doubt = refill.filter(Refill::beingChecked).isPresent() ? "paper.unconfirmed" : "paper.unknown";
            lines.add(refill.filter(fill -> !fill.beingChecked())
                    .map(fill -> sure("paper.fill", date(fill.filled())))
                    .orElseGet(() -> unsure("paper.fill", doubt)));
            lines.add(refill.flatMap(Refill::window)
                    .flatMap(RefillWindow::alarm)
                    .map(day -> sure("paper.alarm", date(day)))
                    .orElseGet(() -> unsure("paper.alarm", doubt)));
        }

        /** Of a schedule the total of a day, and that it is one: who sees the child must not take it for a rate. */
        private String dose(PumpEntry.Setting setting, LocalDate since) {
            var dose = setting.perDay().rounded(DOSE_PLACES).toPlainString();
            if (setting.dosing() instanceof Dosing.Stopped) {
                return say("paper.dose.stopped", date(since));
            }
            return say(setting.dosing().followsTheClock() ? "paper.dose.by-steps" : "paper.dose.is", dose, date(since));
        }

        private List<Line> facts() {
            var data = sheet.child().data();
            var lines = new ArrayList<Line>();
            if (sheet.devices().stream().anyMatch(device -> device.kind() == Device.Kind.PUMP)) {
                pump(lines);
            }
            if (!data.names().legal().equals(data.names().full())) {
                lines.add(sure("paper.legal", data.names().legal()));
            }
            Optional.of(data.interpreter())
                    .filter(asked -> !asked.isEmpty())
                    .ifPresent(asked -> lines.add(sure("paper.interpreter", asked)));
            return lines;
        }

        private Line allergies() {
            var allergies = sheet.child().data().allergies();
            return allergies.known().isEmpty()
                    ? unsure(
                            "paper.allergies", allergies.asked() ? "paper.allergies.none" : "paper.allergies.not-asked")
                    : sure("paper.allergies", words.list(language, allergies.known()));
        }

        private Line sure(String key, String value) {
            return new Line(say(key), value, false);
        }

        private Line unsure(String key, String value) {
            return new Line(say(key), say(value), true);
        }

        private LocalDate day(Instant at) {
            return LocalDate.ofInstant(at, clinic.zone());
        }

        private String date(LocalDate day) {
            return words.dateWithYear(language, day);
        }

        private String time(Instant at) {
            return words.time(language, at.atZone(clinic.zone()).toLocalTime());
        }

        private String say(String key, Object... args) {
            return words.say(language, key, args);
        }
    }
}
