package org.hearthway.task;

import java.util.UUID;

/** Identifies a task. */
public record TaskId(UUID value) {

    /** A new identifier. */
    public static TaskId random() {
        return new TaskId(UUID.randomUUID());
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
