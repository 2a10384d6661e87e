package org.roastfield.lab.files;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Weight of a whole cut, and what it says of sizes: a size that is not stated follows from it by
 * the food's density; if all are stated, it must agree with them.
 */
final class Bulk {

  private static final double LIGHTEST = 0.001;
  private static final double HEAVIEST = 500;

  private final Optional<Entry> entry;
  private final Optional<Double> mass;
  private final double density;
  private final List<Fact> facts;

  /**
   * @param cut section that may have the key {@code weight}
   * @param density of the food at its start temperature [kg/m³]
   * @param facts that those of the weight are added to
   */
  Bulk(Section cut, double density, List<Fact> facts) {
    this.entry = cut.optional("weight");
    this.mass = entry.map(weight -> weight.quantity(Dimension.MASS, LIGHTEST, HEAVIEST));
    this.density = density;
    this.facts = facts;
    entry.ifPresent(weight -> facts.add(new Fact("weight", weight.text())));
  }

  /** Whether a weight is stated. */
  boolean isStated() {
    return mass.isPresent();
  }

  /** Size of the whole cut of a surface [m²] and a volume [m³]. */
  Extent extent(double area, double volume) {
    double bySizes = volume * density;
    return new Extent(area, mass.orElse(bySizes), bySizes);
  }

  /** Volume of the weight, which must be stated [m³]. */
  double volume() {
    return mass.orElseThrow() / density;
  }

  /**
   * A size that follows from the weight.
   *
   * @param name such as "length"
   * @param size [m]
   * @param largest [m]
   */
  double solved(String name, double size, double largest) {
    if (!(size >= ShapeReader.SMALLEST && size <= largest)) {
      throw entry
          .orElseThrow()
          .error(
              String.format(
                  Locale.ROOT,
                  "a weight that fits the other sizes: by this one the %s would be %.1f mm",
                  name,
                  1000 * size));
    }
    facts.add(
        new Fact(
            name,
            String.format(
                Locale.ROOT, "%.1f mm (from the weight, at %.0f kg/m³)", 1000 * size, density)));
    return size;
  }

  /**
   * Refuses a weight that is not that of the stated sizes.
   *
   * @param words the cut with its sizes, such as "a box of these sizes"
   * @param volume by the sizes [m³]
   */
  void check(String words, double volume) {
    if (mass.isEmpty()) {
      return;
    }
    double expected = volume * density;
    double ratio = expected / mass.get();
    if (!(ratio <= 1 + Extent.AGREEMENT && ratio >= 1 / (1 + Extent.AGREEMENT))) {
      throw entry
          .orElseThrow()
          .error(
              String.format(
                  Locale.ROOT,
                  "about %.2f kg, the weight of %s at %.0f kg/m³ (within 20 %%): measure again, or"
                      + " leave out the number you trust least",
                  expected,
                  words,
                  density));
    }
    facts.add(
        new Fact(
            "weight by the sizes",
            String.format(Locale.ROOT, "%.2f kg (agrees within 20 %%)", expected)));
  }
}
