package org.roastfield.lab.files;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.material.FoodKind;
import org.roastfield.core.outcome.CutKind;

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

  /**
   * Kinds of cut that it may be, as far as published minima tell them apart: of meat whose handling
   * is not stated the intact one, and the one that asks for more.
   *
   * @param handling of meat, if stated
   */
  public List<CutKind> kinds(Optional<CutKind> handling) {
    return switch (this) {
      case PORK, BEEF, LAMB ->
          handling.map(List::of).orElse(List.of(CutKind.INTACT, CutKind.TENDERISED));
      case FISH -> List.of(CutKind.FISH);
      case GROUND -> List.of(CutKind.GROUND);
      case POULTRY -> List.of(CutKind.POULTRY);
      case VEGETABLE -> List.of();
      case UNSTATED ->
          handling
              .map(stated -> List.of(stated, CutKind.POULTRY))
              .orElse(List.of(CutKind.INTACT, CutKind.TENDERISED, CutKind.GROUND, CutKind.POULTRY));
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
