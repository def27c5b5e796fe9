package org.hearthway.program.ui;

/** What an exercise is done against. */
enum Against {
    BODY,
    WEIGHT,
    BAND
}
