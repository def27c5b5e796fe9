/** How the clinic's settings and calendar are read and answered for. */
@org.jspecify.annotations.NullMarked
package org.hearthway.clinic.internal;
