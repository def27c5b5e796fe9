package org.hearthway.pump.engine;

/** What a bolus does to the steps that go on under it; pumps differ, so it is a setting. */
public enum BolusMode {
    /** While the bolus runs, nothing else is given. */
    REPLACES_BASAL,
    /** The steps go on under the bolus. */
    ADDS_TO_BASAL
}
