/**
 * The arithmetic of an implanted pump: values and pure functions, exact fractions with one rounding where a number is
 * shown. Nothing from outside but the language, {@code base} and a library of fractions.
 *
 * <p>It checks what the team and the device say; it chooses no dose. Whoever shows a number shows beside it: check
 * against the product label, the local protocol and a second clinician.
 *
 * <p>A pump of 20 mL is filled, runs at one rate, is raised after two weeks, and is looked at:
 *
 * <pre>{@code
 * var zone = ZoneId.of("America/New_York");
 * var pump = PumpModel.programmable(
 *         Volume.millilitres("20"), Volume.millilitres("2"), Volume.millilitres("0.25"),
 *         new FlowRange(FlowRate.millilitresPerDay("0.048"), FlowRate.millilitresPerDay("24")),
 *         Period.ofYears(7));
 * var strength = Concentration.microgramsPerMillilitre("500");
 * var filled = Instant.parse("2026-01-15T15:00:00Z");
 *
 * var reservoir = Reservoir.filled(
 *                 pump,
 *                 Filling.of(filled, Volume.millilitres("20")),
 *                 Program.set(filled, zone, strength, Dosing.constant("100")))
 *         .then(Program.set(Instant.parse("2026-01-29T15:00:00Z"), zone, strength, Dosing.constant("110")));
 *
 * reservoir.at(Instant.parse("2026-02-12T15:00:00Z")).rounded(2);        // 14.12 mL are left
 * reservoir.alarm();                                                     // sounds on 2026-04-08
 *
 * var forecast = RefillForecast.of(reservoir, RefillRules.usual(), zone, day -> true);
 * forecast.opens();                                                      // 2026-03-20 to
 * forecast.latest();                                                     // 2026-04-03
 * forecast.how().lines().forEach(line ->
 *         System.out.println(line.symbols() + " = " + line.numbers(Object::toString)));
 *
 * var visit = Instant.parse("2026-03-31T14:00:00Z");
 * var residual = Residual.at(reservoir, visit, Volume.millilitres("9.5"), ResidualRules.usual());
 * residual.flagged();                                                    // true; residual.look(): more left than expected
 * }</pre>
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hearthway.pump.engine.Dosing}: one rate, {@link org.hearthway.pump.engine.DayPattern} of
 *       {@link org.hearthway.pump.engine.Step} and {@link org.hearthway.pump.engine.Bolus}, a week, stopped, fixed flow
 *   <li>{@link org.hearthway.pump.engine.Conversion}, {@link org.hearthway.pump.engine.ScheduleTotal},
 *       {@link org.hearthway.pump.engine.Deliverable}: what a dose is in other units, comes to, and whether a pump can
 *   <li>{@link org.hearthway.pump.engine.Reservoir}, {@link org.hearthway.pump.engine.RefillForecast},
 *       {@link org.hearthway.pump.engine.OrderBy}, {@link org.hearthway.pump.engine.PrintOutCheck}: volumes and dates
 *   <li>{@link org.hearthway.pump.engine.Residual}, {@link org.hearthway.pump.engine.AfterFill},
 *       {@link org.hearthway.pump.engine.DeliveryRatio}: what is measured at a refill
 *   <li>{@link org.hearthway.pump.engine.FirstDose}, {@link org.hearthway.pump.engine.DoseStep}: advice on doses
 *   <li>{@link org.hearthway.pump.engine.BridgePlan}, {@link org.hearthway.pump.engine.Mixture},
 *       {@link org.hearthway.pump.engine.Priming}: a new strength, a new pump or catheter
 *   <li>{@link org.hearthway.pump.engine.ReplacementPlan}: when a pump ends
 *   <li>{@link org.hearthway.pump.engine.ClinicRules}: everything that clinics do differently
 * </ul>
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("engine")
package org.hearthway.pump.engine;
