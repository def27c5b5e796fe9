package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.parts.Tags;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.engine.DoseRules;
import org.hearthway.pump.engine.Elapsed;
import org.hearthway.pump.engine.FirstDose;
import org.hearthway.pump.engine.Mass;
import org.hearthway.pump.engine.Priming;
import org.hearthway.pump.engine.Unit;
import org.hearthway.words.Words;

/**
 * What is reckoned once, around an implant: the first daily dose from the test dose, and what is primed. Nothing of it is
 * kept; the dose is entered like any other.
 */
final class AfterImplant extends Div {

    private final transient PumpFigures figures;
    private final transient PumpWords say;
    private final transient Words words;
    private final transient PumpReading reading;
    private final BigDecimalField test;
    private final BigDecimalField effect;
    private final Div dose = new Div();

    AfterImplant(PumpFigures figures, Words words, PumpReading reading) {
        this.figures = figures;
        this.say = figures.words();
        this.words = words;
        this.reading = reading;
        addClassName("hw-fields");
        test = amount("pump.first.test", Unit.MICROGRAMS);
        effect = amount("pump.first.effect", Unit.HOURS);
        dose.getElement().setAttribute("aria-live", "polite");
        add(
                new H3(say.say("pump.first.title")),
                Tags.p("hw-sub", say.say("pump.first.rule", rule().effectHours())),
                Tags.div("u-two", test, effect),
                dose,
                new H3(say.say("pump.priming.title")));
        reading.outlook()
                .implant()
                .ifPresentOrElse(this::priming, () -> add(Tags.p("hw-quiet", say.say("pump.priming.none"))));
        add(Tags.p("hw-sub", say.say("pump.state.caution")));
    }

    private DoseRules rule() {
        return reading.rules().dose();
    }

    private BigDecimalField amount(String label, Unit unit) {
        var field = new BigDecimalField(say.say(label));
        field.setLocale(say.language().locale());
        field.setSuffixComponent(Tags.span("hw-sub", unit.symbol()));
        field.setValueChangeMode(ValueChangeMode.LAZY);
        field.addValueChangeListener(typed -> reckon());
        return field;
    }

    private void reckon() {
        dose.removeAll();
        test.setInvalid(false);
        effect.setInvalid(false);
        if (test.isEmpty() || effect.isEmpty()) {
            return;
        }
        try {
            var first = FirstDose.after(Mass.micrograms(test.getValue()), hours(effect.getValue()), rule());
            dose.add(
                    new DerivationList(figures).derivation(first.how()),
                    Tags.p("hw-sub", say.say(first.doubled() ? "pump.first.doubled" : "pump.first.same")));
        } catch (Invalid invalid) {
            var named = Map.of("test", test, "dose", test, "effect", effect, "hours", effect);
            invalid.problems().forEach(problem -> {
                var field = Optional.ofNullable(named.get(problem.field())).orElse(test);
                field.setErrorMessage(words.say(say.language(), problem));
                field.setInvalid(true);
            });
        }
    }

    private static Elapsed hours(BigDecimal typed) {
        return Elapsed.hours(typed.toPlainString());
    }

    private void priming(PumpEntry.Implant implant) {
        var strength = reading.outlook().setting().map(PumpEntry.Setting::strength);
        if (strength.isEmpty()) {
            add(Tags.p("hw-quiet", say.say("pump.priming.no-strength")));
            return;
        }
        var primed = Priming.after(
                Priming.Change.PUMP, implant.model(), implant.catheter(), strength.get(), reading.rules());
        add(Tags.p("", say.say("pump.priming.before", figures.result(primed.beforeImplant()))));
        if (primed.missing().isEmpty()) {
            add(new DerivationList(figures).derivation(primed.how()));
        } else {
            add(Tags.p("hw-b", say.say("pump.priming.missing")));
        }
        add(Tags.p("hw-sub", say.say("pump.priming.watch", reading.rules().primingHours())));
    }
}
