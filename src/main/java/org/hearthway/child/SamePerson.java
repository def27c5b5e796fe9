package org.hearthway.child;

import org.hearthway.base.AccountId;

/** Whether two accounts belong to one human being. A port: accounts are known further on. */
public interface SamePerson {

    /** Whether both accounts are one person's, as far as their names and telephone numbers tell. */
    boolean areOne(AccountId first, AccountId second);
}
