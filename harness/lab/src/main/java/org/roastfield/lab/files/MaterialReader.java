package org.roastfield.lab.files;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.material.ChoiOkos;
import org.roastfield.core.material.Composition;
import org.roastfield.core.material.Material;

/** Reads what a cut is made of: a composition, or three constant properties. */
final class MaterialReader {

  /** In the order of {@link Composition}. */
  private static final List<String> PARTS =
      List.of("water", "protein", "fat", "carbohydrate", "fibre", "ash");

  private MaterialReader() {}

  static Material read(Entry entry) {
    Section section =
        entry.section("name", "composition", "conductivity", "density", "heat-capacity");
    String name = section.required("name").name();
    Optional<Entry> composition = section.optional("composition");
    if (composition.isEmpty()) {
      return constant(name, section);
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

  private static Material constant(String name, Section section) {
    return Material.constant(
        name,
        section.quantity("conductivity", Dimension.CONDUCTIVITY, 0.01, 10),
        section.quantity("density", Dimension.DENSITY, 100, 3000),
        section.quantity("heat-capacity", Dimension.HEAT_CAPACITY, 100, 10_000));
  }

  private static Material composed(String name, Entry entry) {
    Section parts = entry.section(PARTS.toArray(String[]::new));
    List<Double> shares = PARTS.stream().map(key -> share(parts, key)).toList();
    double sum = shares.stream().mapToDouble(Double::doubleValue).sum();
    if (!(Math.abs(sum - 1) <= Composition.STATED_SUM_TOLERANCE)) {
      throw entry.error(
          String.format(
              Locale.ROOT, "shares that sum to 95 %% … 105 %%; these sum to %.1f %%", 100 * sum));
    }
    return entry.guard(
        () ->
            ChoiOkos.material(
                name,
                Composition.of(
                    shares.get(0),
                    shares.get(1),
                    shares.get(2),
                    shares.get(3),
                    shares.get(4),
                    shares.get(5))));
  }

  private static double share(Section parts, String key) {
    return parts.optional(key).map(part -> part.quantity(Dimension.SHARE, 0, 1)).orElse(0.0);
  }
}
