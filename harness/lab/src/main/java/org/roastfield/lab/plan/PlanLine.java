package org.roastfield.lab.plan;

/**
 * A statement of a plan.
 *
 * @param subject in a few words
 * @param text in one sentence or two
 * @param status what it rests on, such as "assumed"; empty where that stands elsewhere
 */
public record PlanLine(String subject, String text, String status) {}
