package org.hearthway.access.internal;

import static org.hearthway.base.Action.ANSWER_VISIT;
import static org.hearthway.base.Action.BOOK_VISIT;
import static org.hearthway.base.Action.CHANGE_CHILD;
import static org.hearthway.base.Action.CHANGE_PATH;
import static org.hearthway.base.Action.CHANGE_PROGRAM;
import static org.hearthway.base.Action.CHANGE_STATUS;
import static org.hearthway.base.Action.END_TASK;
import static org.hearthway.base.Action.ENTER_CHILD;
import static org.hearthway.base.Action.ENTER_FACTS;
import static org.hearthway.base.Action.GIVE_TASK;
import static org.hearthway.base.Action.LIFT_PRECAUTION;
import static org.hearthway.base.Action.LINK_CAREGIVER;
import static org.hearthway.base.Action.LINK_HELPER;
import static org.hearthway.base.Action.LIST_CHILDREN;
import static org.hearthway.base.Action.LOG_SESSION;
import static org.hearthway.base.Action.MANAGE_ACCOUNTS;
import static org.hearthway.base.Action.MANAGE_CLINIC;
import static org.hearthway.base.Action.MERGE_CHILDREN;
import static org.hearthway.base.Action.RECORD_DEVICE;
import static org.hearthway.base.Action.RECORD_EQUIPMENT;
import static org.hearthway.base.Action.RECORD_MEDICINE;
import static org.hearthway.base.Action.RECORD_PUMP;
import static org.hearthway.base.Action.RECORD_STIMULATOR;
import static org.hearthway.base.Action.RECORD_SURVEILLANCE;
import static org.hearthway.base.Action.REPORT;
import static org.hearthway.base.Action.SAFEGUARD;
import static org.hearthway.base.Action.SEE_CHOOSING;
import static org.hearthway.base.Action.SEE_FAMILY_PAGES;
import static org.hearthway.base.Action.SEE_FOLDER;
import static org.hearthway.base.Action.SEE_HOMES;
import static org.hearthway.base.Action.SEE_WEEK;
import static org.hearthway.base.Action.SIGN_EMERGENCY_PLAN;
import static org.hearthway.base.Action.SIGN_MEDICINE;
import static org.hearthway.base.Action.TICK_TASK;
import static org.hearthway.base.Action.TRY_PICTURE;
import static org.hearthway.base.Action.WORK_DESK;
import static org.hearthway.base.Action.WORK_NEEDS;

import java.util.Set;
import org.hearthway.base.Action;
import org.hearthway.base.Role;
import org.hearthway.child.Households.Reach;

/** Who may do what: the whole decision in one table. What does not stand here is denied. */
final class AccessTable {

    private AccessTable() {}

    /** What a caregiver may do, for a child that this caregiver cares for. */
    static Set<Action> granted(Reach reach) {
        return switch (reach) {
            case FULL -> Set.of(SEE_FAMILY_PAGES, SEE_WEEK, LOG_SESSION, ANSWER_VISIT, REPORT, TICK_TASK, LINK_HELPER);
            case VIEW_ONLY -> Set.of(SEE_FAMILY_PAGES, SEE_WEEK);
        };
    }

    /** What changes nothing. */
    static Set<Action> onlyLooking() {
        return Set.of(SEE_FAMILY_PAGES, SEE_WEEK, SEE_FOLDER, SEE_CHOOSING, SEE_HOMES);
    }

    /** What nobody may do to a child that this person cares for, whatever else the person is. */
    static Set<Action> closedToFamily() {
        return Set.of(SEE_HOMES, SAFEGUARD, MERGE_CHILDREN);
    }

    /** What a helper may do, for a child whom this helper helps today. */
    static Set<Action> grantedToHelper() {
        return Set.of(SEE_WEEK, LOG_SESSION);
    }

    /** What a person whom an administrator named for safeguarding may do besides, when the role is one of these. */
    static Set<Action> grantedToNamed(Role role) {
        return switch (role) {
            case THERAPIST, PHYSICIAN, NURSE, COORDINATOR -> Set.of(SAFEGUARD);
            case CAREGIVER, HELPER, ADMINISTRATOR -> Set.of();
        };
    }

    /** What a role may do, for every child of the clinic. A caregiver's or a helper's role alone grants nothing. */
    static Set<Action> granted(Role role) {
        return switch (role) {
            case CAREGIVER, HELPER -> Set.of();
            case THERAPIST ->
                Set.of(
                        LIST_CHILDREN,
                        SEE_FAMILY_PAGES,
                        SEE_WEEK,
                        SEE_FOLDER,
                        SEE_HOMES,
                        CHANGE_PROGRAM,
                        RECORD_EQUIPMENT,
                        SEE_CHOOSING,
                        ENTER_FACTS,
                        RECORD_SURVEILLANCE,
                        WORK_NEEDS,
                        GIVE_TASK,
                        END_TASK,
                        TRY_PICTURE);
            case PHYSICIAN ->
                Set.of(
                        LIST_CHILDREN,
                        SEE_FAMILY_PAGES,
                        SEE_WEEK,
                        SEE_HOMES,
                        SEE_FOLDER,
                        CHANGE_CHILD,
                        CHANGE_PATH,
                        CHANGE_PROGRAM,
                        RECORD_PUMP,
                        RECORD_STIMULATOR,
                        RECORD_DEVICE,
                        RECORD_EQUIPMENT,
                        SEE_CHOOSING,
                        ENTER_FACTS,
                        RECORD_SURVEILLANCE,
                        RECORD_MEDICINE,
                        CHANGE_STATUS,
                        LIFT_PRECAUTION,
                        SIGN_EMERGENCY_PLAN,
                        SIGN_MEDICINE,
                        WORK_NEEDS,
                        GIVE_TASK,
                        END_TASK);
            case NURSE ->
                Set.of(
                        LIST_CHILDREN,
                        SEE_FAMILY_PAGES,
                        SEE_WEEK,
                        SEE_HOMES,
                        SEE_FOLDER,
                        CHANGE_CHILD,
                        CHANGE_PATH,
                        RECORD_PUMP,
                        RECORD_STIMULATOR,
                        RECORD_DEVICE,
                        RECORD_EQUIPMENT,
                        SEE_CHOOSING,
                        ENTER_FACTS,
                        RECORD_SURVEILLANCE,
                        RECORD_MEDICINE,
                        CHANGE_STATUS,
                        WORK_NEEDS,
                        GIVE_TASK,
                        END_TASK,
                        BOOK_VISIT,
                        ANSWER_VISIT);
            // answers what a family said on the telephone
            case COORDINATOR ->
                Set.of(
                        LIST_CHILDREN,
                        ENTER_CHILD,
                        SEE_FAMILY_PAGES,
                        SEE_WEEK,
                        SEE_HOMES,
                        SEE_FOLDER,
                        CHANGE_CHILD,
                        LINK_CAREGIVER,
                        LINK_HELPER,
                        CHANGE_STATUS,
                        WORK_NEEDS,
                        GIVE_TASK,
                        END_TASK,
                        BOOK_VISIT,
                        ANSWER_VISIT,
                        WORK_DESK);
            // runs the clinic's side of the program, and neither reads a folder nor writes anything clinical
            case ADMINISTRATOR ->
                Set.of(
                        LIST_CHILDREN,
                        ENTER_CHILD,
                        SEE_FAMILY_PAGES,
                        SEE_WEEK,
                        SEE_HOMES,
                        CHANGE_CHILD,
                        LINK_CAREGIVER,
                        LINK_HELPER,
                        MERGE_CHILDREN,
                        MANAGE_ACCOUNTS,
                        TRY_PICTURE,
                        MANAGE_CLINIC);
        };
    }

    /** What the holder of a link may do, for the child that the link is about. */
    static Set<Action> grantedToLink() {
        return Set.of(ANSWER_VISIT);
    }
}
