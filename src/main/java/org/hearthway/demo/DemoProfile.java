package org.hearthway.demo;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.context.annotation.Profile;

/** Marks what exists in the demo clinic only, and never where a real clinic's profile is on. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Profile("demo & !clinic")
@interface DemoProfile {}
