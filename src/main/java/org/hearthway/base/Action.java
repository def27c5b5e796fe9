package org.hearthway.base;

/** What a viewer may want to do. Each is decided in one place, {@link Gate}. */
public enum Action {
    /** See the family's own pages of a child: today, week, path, dates. */
    SEE_FAMILY_PAGES(true),
    /** See what a child does at home on which day, and how each exercise is done; nothing else of it. */
    SEE_WEEK(true),
    /** Tick an exercise, rate effort and pain. */
    LOG_SESSION(true),
    /** Confirm a visit or ask to move it. */
    ANSWER_VISIT(true),
    /** Report a sign after the call, write a note to the team. */
    REPORT(true),
    /** Say that the family has done what it was asked to do, and take that back. */
    TICK_TASK(true),
    /** Open a child's folder at the clinic. */
    SEE_FOLDER(true),
    /** Enter or correct a child's names, birth date, level. */
    CHANGE_CHILD(true),
    /** Begin a path, set or override a stage date. */
    CHANGE_PATH(true),
    /** Save a version of the home program. */
    CHANGE_PROGRAM(true),
    /** Give leave to do an exercise although a rule of care forbids the movement. */
    LIFT_PRECAUTION(true),
    /** Record a fill or an alarm date. */
    RECORD_PUMP(true),
    /** Record what a stimulator showed, and check as the second person what somebody else recorded. */
    RECORD_STIMULATOR(true),
    /** Enter which devices are in a child's body. */
    RECORD_DEVICE(true),
    /** Enter casts, splints and equipment, and what a look at them showed. */
    RECORD_EQUIPMENT(true),
    /** See the facts that speak for and against each path, and what was decided. */
    SEE_CHOOSING(true),
    /** Enter facts for the choice of a path. */
    ENTER_FACTS(true),
    /** Record a check of hips or spine. */
    RECORD_SURVEILLANCE(true),
    /** Write the medicine list and toxin sessions, and check as the second person what somebody else wrote. */
    RECORD_MEDICINE(true),
    /** Sign a taper calendar; plan a toxin session before the clinic's interval. */
    SIGN_MEDICINE(true),
    /** Say where a child stands with the clinic, confirm a death, take it back. */
    CHANGE_STATUS(true),
    /** Sign what must be done in an emergency. */
    SIGN_EMERGENCY_PLAN(true),
    /** Take up, answer, set aside an item that needs a look. */
    WORK_NEEDS(true),
    /** Give a task about a child, say it anew. */
    GIVE_TASK(true),
    /** End a task with an outcome, set it aside, open it again. */
    END_TASK(true),
    /** Book, move, cancel a visit. */
    BOOK_VISIT(true),
    /** Send, hold or give up a message, note a call. */
    WORK_DESK(true),
    /** Say who cares for a child and how far that reaches. */
    LINK_CAREGIVER(true),
    /** Put two entries of one child together, and take it back. */
    MERGE_CHILDREN(true),
    /** See how to reach each caregiver, and what the team knows of each home. */
    SEE_HOMES(true),
    /** Ask somebody outside the clinic to help a child for a time, and end it. */
    LINK_HELPER(true),
    /** See and say whether a safeguarding flag stands; for staff whom an administrator named. */
    SAFEGUARD(true),
    /** See the list of children. */
    LIST_CHILDREN(false),
    /** Enter a new child. */
    ENTER_CHILD(false),
    /** See the list of accounts, invite, disable, renew a link. */
    MANAGE_ACCOUNTS(false),
    /** Try out a file of an exercise's picture; nothing of it is kept. */
    TRY_PICTURE(false),
    /** See clinic settings; accept or send back family content; change the values of a path for the clinic. */
    MANAGE_CLINIC(false);

    private final boolean aboutAChild;

    Action(boolean aboutAChild) {
        this.aboutAChild = aboutAChild;
    }

    /** Whether the action is about one child; the others are about the clinic. */
    public boolean isAboutAChild() {
        return aboutAChild;
    }
}
