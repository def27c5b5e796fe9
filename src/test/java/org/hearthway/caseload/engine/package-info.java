/** Tests of the rules that find what needs a look. */
@org.jspecify.annotations.NullMarked
package org.hearthway.caseload.engine;
