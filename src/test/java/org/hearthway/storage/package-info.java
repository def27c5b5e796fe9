/** Tests of the database itself. */
@org.jspecify.annotations.NullMarked
package org.hearthway.storage;
