package org.roastfield.lab.timeline;

import java.time.LocalDateTime;

/**
 * An awaited event of a cook.
 *
 * @param name what happens, with the stage's name as the cook file writes it (untrusted text)
 * @param time since the start of the cook [s]
 * @param clock the same as clock time
 * @param core temperature of the middle [K]
 * @param surface temperature of the surface; in a slab, of the upper face [K]
 * @param note what to know about it, or empty
 */
public record Milestone(
    String name, double time, LocalDateTime clock, double core, double surface, String note) {}
