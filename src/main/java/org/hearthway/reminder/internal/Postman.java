package org.hearthway.reminder.internal;

import jakarta.mail.internet.MimeMessage;

/** Takes a message out of the house. */
interface Postman {

    /**
     * Hands the message over; when this returns, it is out of our hands.
     *
     * @throws NotTaken when it was not taken, or when nobody can say
     */
    void deliver(MimeMessage message) throws NotTaken;

    /** Whether messages travel on, rather than lie in a folder. */
    boolean sends();

    /** A message that was not handed over. Carries no address and no text. */
    class NotTaken extends Exception {

        private final String reason;
        private final boolean forGood;
        private final boolean doubtful;

        /**
         * What went wrong.
         *
         * @param reason the last part of a key {@code reminder.reason.…}
         * @param forGood whether trying again is of no use
         * @param doubtful whether the message may have been taken all the same
         */
        NotTaken(String reason, boolean forGood, boolean doubtful) {
            super(reason);
            this.reason = reason;
            this.forGood = forGood;
            this.doubtful = doubtful;
        }

        String reason() {
            return reason;
        }

        boolean isForGood() {
            return forGood;
        }

        boolean isDoubtful() {
            return doubtful;
        }
    }
}
