package org.hearthway.figure.engine;

/**
 * Lengths of the body's segments as fractions of its height.
 *
 * <p>Adults: Drillis and Contini 1966 as given in Winter, Biomechanics and Motor Control of Human Movement, 4th ed.
 * 2009, figure 4.1 (read in three public transcriptions). Children: legs by sitting height over height, which falls
 * through childhood (Khadilkar 2019; read), its values at 3, 6 and 10 years from memory; head a quarter of the length
 * at birth and a seventh in adults (read), between them from memory; trunk is what remains; neck, arms, half widths and
 * thickness are design values.
 *
 * @param hip floor to hip joint
 * @param ankle floor to ankle joint
 * @param trunk hip to shoulder line
 * @param neck shoulder line to chin
 * @param head chin to crown
 * @param hips half the distance of the hip joints
 * @param shoulders half the distance of the shoulder joints
 * @param fat how thick limbs are beside those of a child of six
 */
public record Proportions(
        double hip,
        double thigh,
        double shank,
        double ankle,
        double trunk,
        double neck,
        double head,
        double upperArm,
        double forearm,
        double hand,
        double foot,
        double hips,
        double shoulders,
        double fat) {

    private static final double[] YEARS = {3, 6, 10, 15, 20};
    private static final double[][] TABLE = {
        {.480, .222, .223, .035, .291, .034, .195, .173, .136, .097, .152, .051, .098, 1.10},
        {.502, .232, .233, .037, .286, .042, .170, .178, .139, .099, .152, .052, .099, 1.0},
        {.525, .243, .243, .039, .279, .047, .150, .182, .143, .102, .152, .053, .101, .94},
        {.530, .245, .246, .039, .283, .051, .136, .186, .146, .104, .152, .054, .103, .92},
        {.530, .245, .246, .039, .288, .052, .130, .186, .146, .108, .152, .054, .103, .92}
    };

    /** The proportions at an age in years, linear between the ages of the table; below 3 as at 3, from 20 adult. */
    public static Proportions at(double years) {
        double age = Math.max(YEARS[0], Math.min(YEARS[YEARS.length - 1], years));
        int row = 0;
        while (row < YEARS.length - 2 && age > YEARS[row + 1]) {
            row++;
        }
        double part = (age - YEARS[row]) / (YEARS[row + 1] - YEARS[row]);
        var v = new double[TABLE[row].length];
        for (int i = 0; i < v.length; i++) {
            v[i] = TABLE[row][i] + (TABLE[row + 1][i] - TABLE[row][i]) * part;
        }
        return new Proportions(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7], v[8], v[9], v[10], v[11], v[12], v[13]);
    }
}
