package org.roastfield.lab.plan;

/**
 * A wish that a plan does not meet.
 *
 * @param reason in one word, for programs
 * @param wished what was asked for, in the unit of the reason
 * @param reached what the plan has instead
 * @param line the same in words, with what would come nearer
 */
public record Unmet(String reason, double wished, double reached, PlanLine line) {}
