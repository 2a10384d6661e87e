package org.roastfield.core.outcome;

import java.util.OptionalDouble;
import org.roastfield.core.internal.Check;

/**
 * How an estimate stands to something published. It permits nothing.
 *
 * @param minimum what is published
 * @param source where
 * @param met whether the estimate meets it; never that the food does
 * @param margin by how much, below 0 if not met
 * @param unit of the margin
 * @param chance share of the cooks of an ensemble that meet it, in [0, 1]; empty for a single cook
 * @param caution what else to know
 */
public record Finding(
    String minimum,
    String source,
    boolean met,
    double margin,
    Unit unit,
    OptionalDouble chance,
    String caution) {

  /** Who decides. */
  public static final String DEFERENCE =
      "Local food codes and trained people decide; this estimate does not.";

  /** Unit of a margin. */
  public enum Unit {
    /** Temperature. */
    KELVIN,
    /** Powers of ten. */
    LOG,
    /** Time. */
    SECOND
  }

  /**
   * @throws IllegalArgumentException if a text is blank, or the chance outside [0, 1]
   */
  public Finding {
    Check.notBlank("minimum", minimum);
    Check.notBlank("source", source);
    Check.finite("margin", margin);
    chance.ifPresent(share -> Check.inRange("chance", share, 0, 1));
  }

  /** The same with a chance. */
  public Finding withChance(double share) {
    return new Finding(minimum, source, met, margin, unit, OptionalDouble.of(share), caution);
  }
}
