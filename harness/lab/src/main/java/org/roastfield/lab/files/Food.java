package org.roastfield.lab.files;

import java.util.Optional;
import org.roastfield.core.material.FoodKind;

/** Kind of food, which decides the published minimum that a result is held against. */
public enum Food {
  PORK("pork"),
  BEEF("beef"),
  LAMB("lamb"),
  POULTRY("poultry"),
  FISH("fish"),
  GROUND("ground"),
  VEGETABLE("vegetable"),
  /** The cook file does not say. */
  UNSTATED("unstated");

  private final String word;

  Food(String word) {
    this.word = word;
  }

  /** Word used in files and texts. */
  public String word() {
    return word;
  }

  /** What the material of such a cut must be, if that follows. */
  Optional<FoodKind> kind() {
    return switch (this) {
      case PORK, BEEF, LAMB -> Optional.of(FoodKind.MEAT);
      case POULTRY -> Optional.of(FoodKind.POULTRY);
      case FISH -> Optional.of(FoodKind.FISH);
      case VEGETABLE -> Optional.of(FoodKind.VEGETABLE);
      case GROUND, UNSTATED -> Optional.empty();
    };
  }

  /** What a material of a kind makes of a cut whose food is not stated. */
  static Food of(FoodKind kind) {
    return switch (kind) {
      case POULTRY -> POULTRY;
      case FISH -> FISH;
      case VEGETABLE -> VEGETABLE;
      case MEAT -> UNSTATED;
    };
  }
}
