package org.hearthway.access;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Viewer;
import org.hearthway.child.Helpers.Help;
import org.hearthway.child.Helpers.Helper;
import org.hearthway.child.Homes.Entered;
import org.hearthway.child.Households.Reach;

/**
 * The people around a child, each field for those who need it: the team sees all; a caregiver sees who the others are,
 * and a telephone number only when its owner shares it and nobody said that the two are to be kept apart.
 */
public interface Circle {

    /**
     * A caregiver of a child as this viewer may see it; a field that the viewer may not see is empty.
     *
     * @param name how the person is called
     * @param reach how far the person's reach goes
     * @param relation to the child, if entered
     * @param phone number to call, if there is one
     * @param email address
     * @param language of screens and messages
     * @param zone of the person's own clock
     * @param home all that the team knows of this home, if anything was entered
     */
    record Member(
            AccountId account,
            String name,
            Reach reach,
            Optional<String> relation,
            Optional<String> phone,
            Optional<String> email,
            Optional<Language> language,
            Optional<ZoneId> zone,
            Optional<Entered> home) {}

    /** A helper with the names that go with it. */
    record Aide(Helper helper, String name, String consentBy) {}

    /**
     * Whom to ask to help.
     *
     * @param name how the person is called
     * @param email address to sign in with
     * @param language of screens
     * @param help what for, until when and with whose consent
     */
    record NewHelper(String name, String email, Language language, Help help) {}

    /** The caregivers of a child. */
    List<Member> members(Viewer viewer, ChildId child);

    /** Who helps or helped, those who still do first. */
    List<Aide> helpers(Viewer viewer, ChildId child);

    /**
     * Lets somebody help a child. Somebody who helps another child already needs no new link.
     *
     * @return the link with which a new helper sets a password, shown once
     * @throws org.hearthway.base.Invalid naming field and bound, also when the address is that of somebody else
     */
    Optional<Accounts.Invitation> askToHelp(Viewer viewer, ChildId child, NewHelper helper);
}
