/** What a first visitor of the demo clinic sees must fit together. */
@org.jspecify.annotations.NullMarked
package org.hearthway.demo;
