/** Tests of the coordinator's board. */
@org.jspecify.annotations.NullMarked
package org.hearthway.desk;
