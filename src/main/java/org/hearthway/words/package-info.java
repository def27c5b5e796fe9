/** Screen words in every language, and dates, hours and numbers said the way people say them. */
@org.jspecify.annotations.NullMarked
package org.hearthway.words;
