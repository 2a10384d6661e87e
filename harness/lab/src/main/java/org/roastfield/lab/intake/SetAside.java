package org.roastfield.lab.intake;

/**
 * A cell or row that did not become a reading.
 *
 * @param line of the file
 * @param text of it, shortened; untrusted
 * @param reason why
 */
public record SetAside(long line, String text, String reason) {}
