package org.roastfield.lab.diagnosis;

import org.roastfield.core.inference.Explanation;

/**
 * Something that may be wrong.
 *
 * @param log name of the log with which; empty for what is wrong with none of them
 * @param suspect what
 * @param time when it began [s]; NaN if it has no time
 * @param promise logarithm of odds times evidence over all being as stated, to first order [nat];
 *     NaN where there is no first order
 * @param explanation the calibration in which it is so
 * @param id of the parameter that says how much
 */
record Suspicion(
    String log, Suspect suspect, double time, double promise, Explanation explanation, String id) {}
