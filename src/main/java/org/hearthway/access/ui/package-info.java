/** The administrator's screens: people, children, words to accept, settings, the trail. */
@org.jspecify.annotations.NullMarked
package org.hearthway.access.ui;
