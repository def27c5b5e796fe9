package org.hearthway.program.ui;

import java.util.Optional;

/**
 * What the editor must know of the child and of the person who writes.
 *
 * @param years the child's age in whole years
 * @param level of gross motor function (GMFCS, 1 to 5), if recorded
 * @param mayLift whether the person may give leave from a rule of care
 * @param mayTry whether the person may try pictures of exercises
 */
record About(int years, Optional<Integer> level, boolean mayLift, boolean mayTry) {}
