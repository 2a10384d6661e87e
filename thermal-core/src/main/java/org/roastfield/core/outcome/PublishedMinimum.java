package org.roastfield.core.outcome;

import java.util.List;
import org.roastfield.core.units.Temperatures;

/**
 * Temperature, and time at it, that an agency publishes.
 *
 * @param of what it is for
 * @param temperature [K]
 * @param hold how long it has to last [s]
 * @param then what has to follow, or empty
 * @param source where it is published
 */
public record PublishedMinimum(
    String of, double temperature, double hold, String then, String source) {

  private static final String USDA =
      "USDA Food Safety and Inspection Service, Safe Minimum Internal Temperature Chart";

  private static final String FOOD_CODE =
      "FDA Food Code 3-401.11, from memory; earlier editions say 15 s";

  /** 145 °F and three minutes of rest. */
  private static final PublishedMinimum WHOLE_CUTS =
      new PublishedMinimum(
          "steaks, chops and roasts of beef, pork and lamb",
          Temperatures.fahrenheit(145),
          180,
          "followed by a rest of 3 minutes",
          USDA);

  private static final PublishedMinimum OPENED =
      new PublishedMinimum(
          "ground, injected or mechanically tenderised meat",
          Temperatures.fahrenheit(155),
          17,
          "held for 17 seconds",
          FOOD_CODE);

  private static final PublishedMinimum FISH =
      new PublishedMinimum("fish", Temperatures.fahrenheit(145), 0, "", USDA);

  private static final PublishedMinimum GROUND =
      new PublishedMinimum("ground meat", Temperatures.fahrenheit(160), 0, "", USDA);

  private static final PublishedMinimum POULTRY =
      new PublishedMinimum("all poultry", Temperatures.fahrenheit(165), 0, "", USDA);

  /**
   * Minima that bear on a kind of cut, the one for consumers first. No code that is known here
   * names rolled meat apart; since a face lies inside as in opened meat, it is held against what is
   * asked of that, on the side of caution.
   */
  public static List<PublishedMinimum> of(CutKind kind) {
    return switch (kind) {
      case INTACT -> List.of(WHOLE_CUTS);
      case TENDERISED, ROLLED -> List.of(WHOLE_CUTS, OPENED);
      case GROUND -> List.of(GROUND, OPENED);
      case POULTRY -> List.of(POULTRY);
      case FISH -> List.of(FISH);
    };
  }

  /**
   * How far a history is above the minimum, by the highest temperature that it holds so long [K].
   */
  public double margin(TemperatureHistory history) {
    return history.heldFor(hold) - temperature;
  }
}
