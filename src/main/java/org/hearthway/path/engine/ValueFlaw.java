package org.hearthway.path.engine;

/** Why the values of a path cannot be as they are. */
public sealed interface ValueFlaw {

    /** A value lies outside its bounds, both of which it may reach. */
    record OutOfBounds(ValuePlace at, Amount least, Amount most) implements ValueFlaw {}

    /** A value is longer, on some day of the year, than the one that it must not pass. */
    record OutOfOrder(ValuePlace shorter, ValuePlace longer) implements ValueFlaw {}

    /** A stage would get no day, even if the clinic were open every day. */
    record NoDay(Clash clash) implements ValueFlaw {}
}
