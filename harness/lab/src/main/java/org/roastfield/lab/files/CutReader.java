package org.roastfield.lab.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.material.ChoiOkos;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;

/** Reads the cut of a cook file. */
final class CutReader {

  /** Emissivity of moist meat, 0.92-0.97; assumed where a file states none. */
  private static final double EMISSIVITY = 0.92;

  /** Water activity of a fresh surface; assumed where a file states none. */
  private static final double WATER_ACTIVITY = 0.98;

  private final Section section;
  private final List<Fact> facts = new ArrayList<>();

  private CutReader(Section section) {
    this.section = section;
  }

  static CutSetup read(Entry entry) {
    return new CutReader(
            entry.section(
                "food",
                "shape",
                "thickness",
                "diameter",
                "length",
                "width",
                "start-temperature",
                "material",
                "emissivity",
                "water-activity"))
        .setup();
  }

  private CutSetup setup() {
    Food food = food();
    Shape shape = shape();
    Material material = new MaterialReader(food, facts).read(section.required("material"));
    Entry start = section.required("start-temperature");
    facts.add(new Fact("start temperature", start.text()));
    double startTemperature = start.quantity(Dimension.TEMPERATURE, 173.15, 373.15);
    if (startTemperature <= material.freezingPoint()) {
      throw start.error(
          "above "
              + Dimension.TEMPERATURE.text(material.freezingPoint())
              + ", where "
              + material.name()
              + " begins to freeze: freezing and thawing are not represented, so thaw the cut fully,"
              + " in the cold, and state the temperature in its middle");
    }
    if (!(startTemperature >= ChoiOkos.LOWEST)) {
      throw start.error(
          "at least "
              + Dimension.TEMPERATURE.text(ChoiOkos.LOWEST)
              + ", since freezing and thawing are not represented: thaw the cut first");
    }
    Cut cut = start.guard(() -> new Cut(shape, material, startTemperature));
    double emissivity = stated("emissivity", EMISSIVITY);
    double waterActivity = stated("water-activity", WATER_ACTIVITY);
    Optional<Extent> extent = extent(shape, material.density());
    return new CutSetup(
        cut, food, emissivity, waterActivity, extent, areaPerPerimeter(shape), facts);
  }

  private Food food() {
    Optional<Entry> entry = section.optional("food");
    if (entry.isEmpty()) {
      return foodOfMaterial();
    }
    String word = entry.get().text();
    facts.add(new Fact("food", word));
    List<String> words =
        Arrays.stream(Food.values()).filter(f -> f != Food.UNSTATED).map(Food::word).toList();
    return Arrays.stream(Food.values())
        .filter(food -> food != Food.UNSTATED && food.word().equals(word))
        .findFirst()
        .orElseThrow(() -> entry.get().error(oneOf(words, word)));
  }

  private Food foodOfMaterial() {
    Food food =
        MaterialReader.inCatalogue(section.required("material"))
            .map(foodstuff -> Food.of(foodstuff.kind()))
            .orElse(Food.UNSTATED);
    facts.add(
        new Fact(
            "food", food == Food.UNSTATED ? "not stated" : food.word() + " (by the material)"));
    return food;
  }

  private Shape shape() {
    Entry entry = section.required("shape");
    facts.add(new Fact("shape", entry.text()));
    return switch (entry.text()) {
      case "slab" -> Slab.ofThickness(size("thickness", "diameter"));
      case "cylinder" -> Cylinder.ofDiameter(size("diameter", "thickness", "width"));
      case "sphere" -> Sphere.ofDiameter(size("diameter", "thickness", "width", "length"));
      default -> throw entry.error(oneOf(List.of("slab", "cylinder", "sphere"), entry.text()));
    };
  }

  private double size(String key, String... unfit) {
    String shape = section.required("shape").text();
    for (String other : unfit) {
      section
          .optional(other)
          .ifPresent(
              entry -> {
                throw entry.error("no " + other + " for a " + shape);
              });
    }
    Entry entry = section.required(key);
    facts.add(new Fact(key, entry.text()));
    return entry.quantity(Dimension.LENGTH, 0.001, 1);
  }

  private Optional<Extent> extent(Shape shape, double density) {
    Optional<Double> area = area(shape);
    return area.map(a -> new Extent(a, a * volumePerArea(shape) * density));
  }

  /** A slab's area is that of one face, which has the whole thickness behind it. */
  private static double volumePerArea(Shape shape) {
    return shape instanceof Slab ? shape.thickness() : shape.volumePerArea();
  }

  private Optional<Double> area(Shape shape) {
    if (shape instanceof Sphere) {
      return Optional.of(Math.PI * shape.thickness() * shape.thickness());
    }
    Optional<Double> length = sideLength("length");
    if (shape instanceof Cylinder) {
      return length.map(l -> Math.PI * shape.thickness() * l);
    }
    Optional<Double> width = sideLength("width");
    return length.flatMap(l -> width.map(w -> l * w));
  }

  private Optional<Double> areaPerPerimeter(Shape shape) {
    return shape instanceof Slab && section.has("length") && section.has("width")
        ? Optional.of(0.5 / (1 / side("length") + 1 / side("width")))
        : Optional.empty();
  }

  private Optional<Double> sideLength(String key) {
    return section
        .optional(key)
        .map(
            entry -> {
              facts.add(new Fact(key, entry.text()));
              return side(key);
            });
  }

  private double side(String key) {
    return section.quantity(key, Dimension.LENGTH, 0.001, 5);
  }

  private double stated(String key, double otherwise) {
    Optional<Entry> entry = section.optional(key);
    String subject = key.replace('-', ' ');
    facts.add(
        new Fact(subject, entry.map(Entry::text).orElse(otherwise + " (not stated, so assumed)")));
    return entry.map(e -> e.quantity(Dimension.SHARE, 0.01, 1)).orElse(otherwise);
  }

  private static String oneOf(List<String> words, String word) {
    String hint = Spelling.nearest(word, words).map(near -> "; nearest known: " + near).orElse("");
    return "one of " + String.join(", ", words) + hint;
  }
}
