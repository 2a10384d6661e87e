package org.roastfield.lab.timeline;

/**
 * A caution that belongs beside a number.
 *
 * @param subject in a few words
 * @param text in one or two sentences
 * @param source where it is published, or empty when it is ours
 */
public record Caution(String subject, String text, String source) {}
