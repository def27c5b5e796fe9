package org.hearthway.pump.internal;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Period;
import java.util.Optional;
import org.hearthway.pump.PumpBook.NewEntry;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Change;
import org.hearthway.pump.PumpEntry.Correction;
import org.hearthway.pump.PumpEntry.Implant;
import org.hearthway.pump.PumpEntry.Refill;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.RefillDetails;
import org.hearthway.pump.engine.Catheter;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.DailyDose;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.FlowRange;
import org.hearthway.pump.engine.FlowRate;
import org.hearthway.pump.engine.Length;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.Volume;
import org.hearthway.pump.engine.VolumePerLength;

/** Entries for a 20 mL pump that sounds at 2 mL, tubing and catheter of 0.40 mL together (reference ITB-W8). */
final class Pages {

    static final String WHY = "agreed in the team";
    private static final RefillDetails DETAILS =
            new RefillDetails("baclofen", "L-1", Optional.empty(), "clear", 1, Optional.empty(), true, "Nurse", "");

    private Pages() {}

    static NewEntry figures(LocalDateTime at) {
        return figures(at, Optional.of("60"));
    }

    static NewEntry figures(LocalDateTime at, Optional<String> catheter) {
        var model = PumpModel.programmable(
                Volume.millilitres("20"),
                Volume.millilitres("2"),
                Volume.millilitres("0.25"),
                new FlowRange(FlowRate.millilitresPerDay("0.048"), FlowRate.millilitresPerDay("24")),
                Period.ofYears(7));
        var tube = new Catheter(
                catheter.map(Length::centimetres), Optional.of(VolumePerLength.millilitresPerCentimetre("0.0025")));
        return entry(at, new Implant("reservoir-20", model, tube));
    }

    static NewEntry refill(LocalDateTime at, String withdrawn, String strength, String dose, LocalDate printed) {
        return entry(at, refill(Optional.of(withdrawn), "20", strength, dose, Optional.of(printed), DETAILS));
    }

    static NewEntry firstRefill(LocalDateTime at, String strength, String dose, LocalDate printed) {
        return entry(at, refill(Optional.empty(), "20", strength, dose, Optional.of(printed), DETAILS));
    }

    static NewEntry injected(LocalDateTime at, String injected) {
        return entry(at, refill(Optional.empty(), injected, "500", "110", Optional.empty(), DETAILS));
    }

    static NewEntry elsewhere(LocalDateTime at, LocalDate printed) {
        var details =
                new RefillDetails("", "", Optional.empty(), "", 0, Optional.empty(), false, "county hospital", "");
        return entry(
                at,
                new Refill(
                        true,
                        details,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(printed),
                        5));
    }

    private static Refill refill(
            Optional<String> withdrawn,
            String injected,
            String strength,
            String dose,
            Optional<LocalDate> printed,
            RefillDetails details) {
        return new Refill(
                false,
                details,
                withdrawn.map(Volume::millilitres),
                Optional.empty(),
                Optional.of(Volume.millilitres(injected)),
                Optional.of(Volume.millilitres(injected)),
                Optional.empty(),
                Optional.of(setting(strength, dose)),
                printed,
                5);
    }

    static NewEntry dose(LocalDateTime at, String strength, String dose) {
        return entry(at, new Change(setting(strength, dose), WHY, Optional.empty()));
    }

    static Setting setting(String strength, String dose) {
        return new Setting(
                Concentration.microgramsPerMillilitre(strength), Dosing.constant(DailyDose.microgramsPerDay(dose)));
    }

    static NewEntry entry(LocalDateTime at, PumpEntry.What what) {
        return new NewEntry(at, what, Optional.empty(), false, "");
    }

    static NewEntry said(NewEntry entry) {
        return new NewEntry(entry.at(), entry.what(), entry.corrects(), entry.emergency(), WHY);
    }

    static NewEntry inAnEmergency(NewEntry entry) {
        return new NewEntry(entry.at(), entry.what(), entry.corrects(), true, "");
    }

    static NewEntry correcting(NewEntry entry, long wrong) {
        return new NewEntry(
                entry.at(), entry.what(), Optional.of(new Correction(wrong, "typed the wrong line")), false, WHY);
    }
}
