package org.hearthway.desk;

import java.util.Set;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.springframework.stereotype.Component;

/** Reads {@code content/desk/rules.yaml}: how far ahead the desk looks. */
@Component
class DeskContent implements ContentKind {

    private int aheadDays;
    private int soonDays;
    private int outDays;
    private int checkWindowDays;
    private String refillKind = "";
    private GeneratorRules generators =
            new GeneratorRules(new GeneratorRules.Kinds("", Set.of()), new GeneratorRules.Kinds("", Set.of()), 0);
    private FittingRules fittings = new FittingRules("", 0, "", 0, 0);

    /**
     * How the desk asks for visits for casts and equipment.
     *
     * @param castKind the kind of visit at which a cast is changed or comes off
     * @param castWindowDays days before and after the planned day in which such a visit keeps it
     * @param mendKind the kind of visit at which what does not fit is put right
     * @param mendWithinDays days after it was seen not to fit by which it should be
     * @param mendWindowDays days before and after that day in which such a visit keeps it
     */
    record FittingRules(String castKind, int castWindowDays, String mendKind, int mendWithinDays, int mendWindowDays) {}

    /**
     * How the desk asks for visits for stimulators.
     *
     * @param read at which a battery is read
     * @param replace at which a new generator is planned
     * @param windowDays days before and after the day in which a visit keeps it
     */
    record GeneratorRules(Kinds read, Kinds replace, int windowDays) {

        /**
         * Kinds of visits.
         *
         * @param kind that is asked for
         * @param also kinds that do as well
         */
        record Kinds(String kind, Set<String> also) {}
    }

    GeneratorRules generators() {
        return generators;
    }

    FittingRules fittings() {
        return fittings;
    }

    int aheadDays() {
        return aheadDays;
    }

    int soonDays() {
        return soonDays;
    }

    int outDays() {
        return outDays;
    }

    int checkWindowDays() {
        return checkWindowDays;
    }

    String refillKind() {
        return refillKind;
    }

    @Override
    public String place() {
        return "desk";
    }

    @Override
    public void read(Entry file) {
        file.provenance();
        aheadDays = file.integer("book-ahead-days", 1, 400);
        outDays = file.integer("going-out-days", 1, 60);
        soonDays = file.integer("ask-days-before", 1, 60);
        var refill = file.block("refill");
        refillKind = refill.text("visit");
        refill.done();
        var check = file.block("check");
        checkWindowDays = check.integer("window-days", 1, 90);
        check.done();
        var cast = file.block("cast");
        var mend = file.block("mend");
        fittings = new FittingRules(
                cast.text("visit"),
                cast.integer("window-days", 0, 30),
                mend.text("visit"),
                mend.integer("within-days", 1, 90),
                mend.integer("window-days", 0, 90));
        cast.done();
        mend.done();
        var generator = file.block("generator");
        generators = new GeneratorRules(
                new GeneratorRules.Kinds(generator.text("read"), Set.copyOf(generator.texts("read-also"))),
                new GeneratorRules.Kinds(generator.text("replace"), Set.copyOf(generator.texts("replace-also"))),
                generator.integer("window-days", 0, 90));
        generator.done();
    }
}
