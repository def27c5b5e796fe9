package org.hearthway.medicine;

import java.time.Instant;
import org.hearthway.base.AccountId;

/** Who read the same prescription and typed the same again, and when. */
public record SecondCheck(AccountId by, Instant at) {}
