package org.roastfield.lab.files;

/**
 * A statement of a cook file for display, in the words and units of the file.
 *
 * @param subject what is stated, such as "thickness"
 * @param text the statement, such as "96 mm"; untrusted text of the file, to be escaped wherever
 *     markup is written
 */
public record Fact(String subject, String text) {}
