package org.hearthway.paper;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.Bilingual;
import org.hearthway.child.Child;
import org.hearthway.child.Device;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Refill;

/**
 * What a stranger in an emergency room must know of a child with a device, on one page.
 *
 * @param child who it is
 * @param made when the sheet was put together; it is true of that moment
 * @param today the clinic's day then
 * @param devices of which at least one part is in the body
 * @param setting strength and daily dose, only when a second person confirmed them
 * @param unconfirmed whether a newer setting waits for its second check, so that none may be shown
 * @param fill the last refill of a pump with its alarm date, once it was checked
 * @param plan what a physician signed
 * @param warnings about the kinds of device in place that the clinic has accepted
 */
public record EmergencySheet(
        Child child,
        Instant made,
        LocalDate today,
        List<Device> devices,
        Optional<Pumps.Running> setting,
        boolean unconfirmed,
        Optional<Refill> fill,
        Optional<Plan> plan,
        List<Warning> warnings) {

    public EmergencySheet {
        devices = List.copyOf(devices);
        warnings = List.copyOf(warnings);
    }

    /** How a warning is meant. */
    public enum Weight {
        /** Must not be done, whoever asks. */
        NEVER,
        /** A danger, how it shows itself, and what it needs. */
        DANGER
    }

    /** One warning of the content. */
    public record Warning(Device.Kind device, Weight weight, Bilingual says) {}

    /**
     * What a physician writes for an emergency.
     *
     * @param surgeonLine telephone of the surgeon's service, at most 60 characters
     * @param catheter where the catheter or the leads lie, at most 200 characters; may be empty
     * @param withdrawal what to do when the pump's drug does not reach the child, at most 700 characters and as many lines as
     *     the sheet holds
     * @param storm what to do in a dystonic storm, within the same bounds
     */
    public record PlanData(String surgeonLine, String catheter, String withdrawal, String storm) {

        /** Nothing written. */
        public static final PlanData EMPTY = new PlanData("", "", "", "");
    }

    /** A signed plan. Later ones supersede earlier ones; none is altered. */
    public record Plan(long number, PlanData data, AccountId signedBy, String signedByName, Instant at) {}
}
