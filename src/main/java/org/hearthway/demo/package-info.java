/** The demo clinic: invented people and children whose last weeks are lived through afresh, so that it never ages. */
@org.jspecify.annotations.NullMarked
package org.hearthway.demo;
