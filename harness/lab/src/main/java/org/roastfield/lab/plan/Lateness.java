package org.roastfield.lab.plan;

import java.util.OptionalDouble;

/**
 * A service that cannot be had any more with the demanded chance. The plan is that of the nearest
 * one that can.
 *
 * @param clock of what was asked for
 * @param asked when it was to be on the table, after that clock's zero [s]
 * @param shouldHaveBegun when the fire should have been lit [s]
 * @param later by how much the plan serves later [s]
 * @param chance of being ready in time for what was asked, if begun at once; empty where even the
 *     fire would not be ready
 */
public record Lateness(
    PlanClock clock, double asked, double shouldHaveBegun, double later, OptionalDouble chance) {}
