package org.hearthway.base;

import java.util.List;

/**
 * One thing wrong with what a person typed: the field, and a message key with arguments that names the bound
 * and the way out. Carries no value the person typed, so that it may be logged.
 *
 * @param field the field's name in the form, or empty when it is about the whole
 * @param key a key of the message bundles
 * @param args arguments of that message
 */
public record Problem(String field, String key, List<Object> args) {

    public Problem {
        args = List.copyOf(args);
    }

    /** A problem with one field. */
    public static Problem at(String field, String key, Object... args) {
        return new Problem(field, key, List.of(args));
    }
}
