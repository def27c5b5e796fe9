package org.hearthway.clinic.internal;

/** The database belongs to the other kind of clinic: a demo's to a real one, or the reverse. */
class WrongDatabase extends RuntimeException {

    private final String marked;
    private final String started;

    WrongDatabase(String marked, String started) {
        super("database marked " + marked + ", started as " + started);
        this.marked = marked;
        this.started = started;
    }

    String marked() {
        return marked;
    }

    String started() {
        return started;
    }
}
