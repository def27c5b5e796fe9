package org.hearthway.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.autoconfigure.web.servlet.AutoConfigureMockMvc;

/** A {@link HearthwayTest} that also sends requests through the whole chain of filters. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@HearthwayTest
@AutoConfigureMockMvc
public @interface WebTest {}
