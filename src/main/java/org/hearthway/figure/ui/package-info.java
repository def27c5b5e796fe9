/** The page on which authors try out the files of pictures. */
@org.jspecify.annotations.NullMarked
package org.hearthway.figure.ui;
