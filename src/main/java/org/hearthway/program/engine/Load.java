package org.hearthway.program.engine;

/** What an exercise is done against. */
public sealed interface Load {

    /** Nothing but the body. */
    record Body() implements Load {}

    /**
     * A weight.
     *
     * @param grams 1 to 200 000
     */
    record Weight(int grams) implements Load {

        private static final int MOST = 200_000;

        public Weight {
            if (grams < 1 || grams > MOST) {
                throw new IllegalArgumentException("1 g to 200 kg");
            }
        }

        /** That share of it, rounded to whole grams, half of one up; at least one gram. */
        public Weight percent(int percent) {
            return new Weight((int) Math.max(1, (grams * (long) percent + 50) / 100));
        }
    }

    /**
     * An elastic band.
     *
     * @param step its place in the clinic's own row of bands, the lightest is 1; at most 10. Colors differ from maker
     *     to maker, so they name no strength.
     */
    record Band(int step) implements Load {

        private static final int MOST = 10;

        public Band {
            if (step < 1 || step > MOST) {
                throw new IllegalArgumentException("band 1 to 10");
            }
        }
    }

    /**
     * Whether going from one weight to the other is more than ten percent at once. Youth strength training raises a
     * weight by 5 to 10 % (Faigenbaum and others 2009; the figures from memory); more is for a therapist to weigh, not
     * for a rule.
     */
    static boolean isABigStep(Load before, Load after) {
        return before instanceof Weight was && after instanceof Weight is && is.grams() * 10L > was.grams() * 11L;
    }
}
