package org.roastfield.lab.intake;

/**
 * Something that was done to a log when it was taken in.
 *
 * @param what in words
 * @param count how many rows or cells it touched
 * @param firstLine of the file, or 0 if it is about the whole
 */
public record Change(String what, long count, long firstLine) {}
