/** Who saw and changed what: append-only; and what changed, told to the family. */
@org.jspecify.annotations.NullMarked
package org.hearthway.audit;
