package org.roastfield.lab.timeline;

import java.util.List;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.Food;

/**
 * Minimum internal temperature that an agency publishes for consumers.
 *
 * @param of what it is for
 * @param temperature [K]
 * @param then what has to follow, or empty
 * @param source where it is published
 */
public record PublishedMinimum(String of, double temperature, String then, String source) {

  private static final String USDA =
      "USDA Food Safety and Inspection Service, Safe Minimum Internal Temperature Chart";

  /** 145 °F and three minutes of rest. */
  private static final PublishedMinimum WHOLE_CUTS =
      new PublishedMinimum(
          "steaks, chops and roasts of beef, pork and lamb",
          Temperatures.fahrenheit(145),
          "followed by a rest of 3 minutes",
          USDA);

  private static final PublishedMinimum FISH =
      new PublishedMinimum("fish", Temperatures.fahrenheit(145), "", USDA);

  private static final PublishedMinimum GROUND =
      new PublishedMinimum("ground meat", Temperatures.fahrenheit(160), "", USDA);

  private static final PublishedMinimum POULTRY =
      new PublishedMinimum("all poultry", Temperatures.fahrenheit(165), "", USDA);

  /**
   * Minima that bear on a kind of food: one, none for vegetables, or all that might if the kind is
   * not stated.
   */
  public static List<PublishedMinimum> forFood(Food food) {
    return switch (food) {
      case PORK, BEEF, LAMB -> List.of(WHOLE_CUTS);
      case FISH -> List.of(FISH);
      case GROUND -> List.of(GROUND);
      case POULTRY -> List.of(POULTRY);
      case VEGETABLE -> List.of();
      case UNSTATED -> List.of(WHOLE_CUTS, GROUND, POULTRY);
    };
  }
}
