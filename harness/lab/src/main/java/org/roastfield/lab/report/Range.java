package org.roastfield.lab.report;

/**
 * Values at the two ends of an axis.
 *
 * @param low lowest
 * @param high highest, greater than {@code low}
 */
record Range(double low, double high) {}
