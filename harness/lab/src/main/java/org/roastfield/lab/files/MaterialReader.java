package org.roastfield.lab.files;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.material.Composition;
import org.roastfield.core.material.FoodKind;
import org.roastfield.core.material.Foodstuff;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Materials;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * Reads what a cut is made of: a name of the catalogue, a composition, or three constant
 * properties.
 */
final class MaterialReader {

  /** In the order of {@link Composition}. */
  private static final List<String> PARTS =
      List.of("water", "protein", "fat", "carbohydrate", "fibre", "ash");

  private final Food food;
  private final List<Fact> facts;

  /**
   * @param food stated for the cut
   * @param facts receives what was read and assumed
   */
  MaterialReader(Food food, List<Fact> facts) {
    this.food = food;
    this.facts = facts;
  }

  /** The foodstuff, if {@code entry} is a name of the catalogue. */
  static Optional<Foodstuff> inCatalogue(Entry entry) {
    return isName(entry) ? Materials.find(entry.text()) : Optional.empty();
  }

  private static boolean isName(Entry entry) {
    return entry.node() instanceof ScalarNode;
  }

  Substance read(Entry entry) {
    if (isName(entry)) {
      return ofCatalogue(entry);
    }
    Section section =
        entry.section("name", "composition", "conductivity", "density", "heat-capacity");
    String name = section.required("name").name();
    facts.add(new Fact("material", name));
    Optional<Entry> composition = section.optional("composition");
    if (composition.isEmpty()) {
      return new Substance(constant(name, section), Optional.empty());
    }
    for (String property : new String[] {"conductivity", "density", "heat-capacity"}) {
      section
          .optional(property)
          .ifPresent(
              unwanted -> {
                throw unwanted.error("no " + property + " beside a composition, which gives it");
              });
    }
    return composed(name, composition.get());
  }

  private Substance ofCatalogue(Entry entry) {
    String name = entry.text();
    Foodstuff foodstuff = inCatalogue(entry).orElseThrow(() -> entry.error(knownNames(name)));
    food.kind()
        .filter(kind -> kind != foodstuff.kind())
        .ifPresent(
            kind -> {
              throw entry.error(
                  kind.word() + ", which the food of this cut is said to be: " + food.word());
            });
    facts.add(new Fact("material", name + " (catalogue; " + foodstuff.source() + ")"));
    return new Substance(foodstuff.material(), Optional.of(foodstuff.composition()));
  }

  private static String knownNames(String name) {
    List<String> names = Materials.all().stream().map(Foodstuff::name).toList();
    String hint = Spelling.nearest(name, names).map(near -> "; nearest known: " + near).orElse("");
    return "one of " + String.join(", ", names) + ", or keys and values (name, composition)" + hint;
  }

  /** Kind of a stated composition: that of the food, else meat. */
  private FoodKind kind() {
    if (food.kind().isEmpty()) {
      facts.add(new Fact("melting and denaturation", "as of meat (food not stated, so assumed)"));
    }
    return food.kind().orElse(FoodKind.MEAT);
  }

  private static Material constant(String name, Section section) {
    return Material.constant(
        name,
        section.quantity("conductivity", Dimension.CONDUCTIVITY, 0.01, 10),
        section.quantity("density", Dimension.DENSITY, 100, 3000),
        section.quantity("heat-capacity", Dimension.HEAT_CAPACITY, 100, 10_000));
  }

  private Substance composed(String name, Entry entry) {
    Section parts = entry.section(PARTS.toArray(String[]::new));
    List<Double> shares = PARTS.stream().map(key -> share(parts, key)).toList();
    double sum = shares.stream().mapToDouble(Double::doubleValue).sum();
    if (!(Math.abs(sum - 1) <= Composition.STATED_SUM_TOLERANCE)) {
      throw entry.error(
          String.format(
              Locale.ROOT, "shares that sum to 95 %% … 105 %%; these sum to %.1f %%", 100 * sum));
    }
    Composition composition =
        entry.guard(
            () ->
                Composition.of(
                    shares.get(0),
                    shares.get(1),
                    shares.get(2),
                    shares.get(3),
                    shares.get(4),
                    shares.get(5)));
    Material material = Foodstuff.of(name, kind(), composition).material();
    return new Substance(material, Optional.of(composition));
  }

  private static double share(Section parts, String key) {
    return parts.optional(key).map(part -> part.quantity(Dimension.SHARE, 0, 1)).orElse(0.0);
  }
}
