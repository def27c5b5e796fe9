package org.hearthway.medicine.ui;

import java.time.LocalDate;
import org.hearthway.base.Language;
import org.hearthway.medicine.engine.Quantity;
import org.hearthway.medicine.engine.ToxinUnits;
import org.hearthway.words.Words;

/** The words of the Medicines page, in the reader's language. */
record MedicineWords(Words words, Language language) {

    String say(String key, Object... args) {
        return words.say(language, key, args);
    }

    /** A date with its year: lists reach years back. */
    String date(LocalDate day) {
        return words.dateWithYear(language, day);
    }

    /** A date with weekday and year. */
    String full(LocalDate day) {
        return say("medicine.day", words.weekday(language, day), date(day));
    }

    String quantity(Quantity quantity) {
        return say("medicine.quantity", quantity.amount().toPlainString(), unit(quantity.unit()));
    }

    String unit(Quantity.Unit unit) {
        return say("medicine.unit." + unit);
    }

    /** Units never stand without their preparation. */
    String units(ToxinUnits units) {
        return say(
                "medicine.toxin.units",
                units.amount().toPlainString(),
                units.preparation().name());
    }
}
