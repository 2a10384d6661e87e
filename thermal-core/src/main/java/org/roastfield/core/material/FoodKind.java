package org.roastfield.core.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.units.Temperatures;

/**
 * Kind of food, which decides at which temperatures its water freezes, its fat melts and its
 * proteins denature, eq. (40).
 */
public enum FoodKind {
  /** Mammals, game included. */
  MEAT("meat", -1.7),
  /** Birds. */
  POULTRY("poultry", -2.8),
  /** Fish, whose fat is oil at all temperatures of a cook. */
  FISH("fish", -2.2),
  /** Vegetables, with hardly any fat or protein; the swelling of starch is left out. */
  VEGETABLE("vegetable", -0.8);

  private final String word;
  private final double freezingPoint;

  FoodKind(String word, double freezingPoint) {
    this.word = word;
    this.freezingPoint = Temperatures.ZERO_CELSIUS + freezingPoint;
  }

  /** Word used in files and messages. */
  public String word() {
    return word;
  }

  /**
   * Initial freezing point [K]: the warmest of the kind in the tables of [ASHRAERefrigeration],
   * quoted from memory (lean beef −1.7 °C, beef carcass −2.2 °C; chicken −2.8 °C; cod and salmon
   * −2.2 °C; cauliflower −0.8 °C, beetroot −1.1 °C).
   */
  public double freezingPoint() {
    return freezingPoint;
  }

  /** Latent heats of a food of this kind, those of its fat first. */
  public List<LatentHeat> latentHeats(Composition composition) {
    List<LatentHeat> heats = new ArrayList<>();
    for (Transition transition : transitions()) {
      transition.of(composition).ifPresent(heats::add);
    }
    return List.copyOf(heats);
  }

  /** What heat presses out: the curve of beef for all meat, poultry and fish, assumed. */
  Optional<WaterHolding> holding() {
    return this == VEGETABLE ? Optional.empty() : Optional.of(WaterHolding.BEEF);
  }

  private List<Transition> transitions() {
    return switch (this) {
      case MEAT -> Transition.OF_MEAT;
      case POULTRY -> Transition.OF_POULTRY;
      case FISH -> Transition.OF_FISH;
      case VEGETABLE -> List.of();
    };
  }
}
