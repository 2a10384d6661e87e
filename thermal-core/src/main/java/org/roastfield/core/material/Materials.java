package org.roastfield.core.material;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Catalogue of raw cuts and foods.
 *
 * <p>Compositions are those of [USDA2016] under the stated number, read in a copy of its
 * abbreviated table; brisket with its fat is quoted from memory of [ASHRAERefrigeration]. Status:
 * literature. Single pieces differ, by {@link Foodstuff#spread()}. Skinless and boneless; a layer
 * of skin or fat on a cut is not in it. Carbohydrate is without fibre. The florets of a cauliflower
 * hold air, which is left out: they conduct less than computed.
 */
public final class Materials {

  private static final List<Foodstuff> ALL =
      List.of(
          meat("beef loin", 69.56, 22.13, 7.39, 1.01, "13231, short loin, lean"),
          new Foodstuff(
              "beef brisket",
              FoodKind.MEAT,
              Composition.ofMeat(0.552, 0.169, 0.265, 0.008),
              "lean and fat; ASHRAE Refrigeration, quoted from memory, not checked"),
          meat("pork loin", 72.23, 21.43, 5.66, 1.05, "10024, loin, lean"),
          meat("pork shoulder", 64.02, 17.18, 17.99, 0.88, "10070, shoulder, lean and fat"),
          meat("lamb leg", 74.11, 20.56, 4.51, 1.07, "17013, leg, lean"),
          meat("venison", 73.57, 22.96, 2.42, 1.16, "17164, deer"),
          meat("bison", 74.57, 21.62, 1.84, 1.20, "17156, bison, lean"),
          poultry("chicken breast", 73.90, 22.50, 2.62, 1.13, "05062, breast, meat only"),
          poultry("chicken thigh", 76.22, 19.66, 4.12, 0.95, "05096, thigh, meat only"),
          poultry("turkey breast", 74.89, 23.66, 1.48, 1.04, "05219, breast, meat only"),
          poultry("turkey thigh", 76.01, 21.28, 2.50, 1.03, "05187, dark meat, meat only"),
          poultry("duck breast", 73.77, 18.28, 5.95, 1.06, "05141, whole duck, meat only"),
          fish("salmon", 64.89, 20.42, 13.42, 1.13, "15236, Atlantic, farmed"),
          fish("tuna", 74.03, 24.40, 0.49, 1.64, "15127, yellowfin"),
          vegetable("beetroot", 87.58, 1.61, 0.17, 6.76, 2.80, 1.08, "11080, beets"),
          vegetable("cauliflower", 92.07, 1.92, 0.28, 2.97, 2.00, 0.76, "11135, cauliflower"));

  private Materials() {}

  /** All foodstuffs of the catalogue, each under a name of its own. */
  public static List<Foodstuff> all() {
    return ALL;
  }

  /** Foodstuff of a name, if the catalogue has it. */
  public static Optional<Foodstuff> find(String name) {
    return ALL.stream().filter(food -> food.name().equals(name)).findFirst();
  }

  /**
   * Foodstuff of a name.
   *
   * @throws IllegalArgumentException if the catalogue has none of that name
   */
  public static Foodstuff named(String name) {
    return find(name)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "name must be one of "
                        + ALL.stream().map(Foodstuff::name).collect(Collectors.joining(", "))
                        + ", was \""
                        + name
                        + "\""));
  }

  private static Foodstuff meat(
      String name, double water, double protein, double fat, double ash, String entry) {
    return of(name, FoodKind.MEAT, entry, water, protein, fat, 0, 0, ash);
  }

  private static Foodstuff poultry(
      String name, double water, double protein, double fat, double ash, String entry) {
    return of(name, FoodKind.POULTRY, entry, water, protein, fat, 0, 0, ash);
  }

  private static Foodstuff fish(
      String name, double water, double protein, double fat, double ash, String entry) {
    return of(name, FoodKind.FISH, entry, water, protein, fat, 0, 0, ash);
  }

  private static Foodstuff vegetable(
      String name,
      double water,
      double protein,
      double fat,
      double carbohydrate,
      double fibre,
      double ash,
      String entry) {
    return of(name, FoodKind.VEGETABLE, entry, water, protein, fat, carbohydrate, fibre, ash);
  }

  /** From percentages. */
  private static Foodstuff of(
      String name,
      FoodKind kind,
      String entry,
      double water,
      double protein,
      double fat,
      double carbohydrate,
      double fibre,
      double ash) {
    Composition composition =
        Composition.of(
            water / 100, protein / 100, fat / 100, carbohydrate / 100, fibre / 100, ash / 100);
    return new Foodstuff(name, kind, composition, "USDA SR release 28, no. " + entry);
  }
}
