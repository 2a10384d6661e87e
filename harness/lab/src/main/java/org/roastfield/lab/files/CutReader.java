package org.roastfield.lab.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.material.ChoiOkos;
import org.roastfield.core.material.Material;
import org.roastfield.core.outcome.CutKind;
import org.roastfield.core.shape.Shape;

/** Reads the cut of a cook file. */
final class CutReader {

  /** Emissivity of moist meat, 0.92-0.97; assumed where a file states none. */
  private static final double EMISSIVITY = 0.92;

  /** Water activity of a fresh surface; assumed where a file states none. */
  private static final double WATER_ACTIVITY = 0.98;

  private static final List<CutKind> HANDLINGS =
      List.of(CutKind.INTACT, CutKind.TENDERISED, CutKind.ROLLED, CutKind.GROUND);

  private final Section section;
  private final List<Fact> facts = new ArrayList<>();

  private CutReader(Section section) {
    this.section = section;
  }

  static CutSetup read(Entry entry) {
    return new CutReader(
            entry.section(
                "food",
                "handling",
                "shape",
                "thickness",
                "diameter",
                "girth",
                "diameters",
                "girths",
                "length",
                "width",
                "weight",
                "biot-number",
                "start-temperature",
                "material",
                "emissivity",
                "water-activity",
                "surface"))
        .setup();
  }

  private CutSetup setup() {
    Food food = food();
    Optional<CutKind> handling = section.optional("handling").map(e -> handling(e, food));
    Substance substance = new MaterialReader(food, facts).read(section.required("material"));
    Material material = substance.material();
    Entry start = section.required("start-temperature");
    facts.add(new Fact("start temperature", start.text()));
    double startTemperature = start.quantity(Dimension.TEMPERATURE, 173.15, 373.15);
    if (startTemperature <= material.freezingPoint() || startTemperature < ChoiOkos.LOWEST) {
      boolean freezes = material.freezingPoint() >= ChoiOkos.LOWEST;
      throw start.error(
          (freezes ? "above " : "at least ")
              + Dimension.TEMPERATURE.text(Math.max(material.freezingPoint(), ChoiOkos.LOWEST))
              + ": freezing and thawing are not represented, so thaw the cut fully, in the cold,"
              + " and state the temperature in its middle");
    }
    ShapeReader form = new ShapeReader(section, substance.densityAt(startTemperature), facts);
    Shape shape = form.shape();
    Cut cut = start.guard(() -> new Cut(shape, material, startTemperature));
    double emissivity = stated("emissivity", EMISSIVITY);
    double waterActivity = stated("water-activity", WATER_ACTIVITY);
    return new CutSetup(
        cut,
        food,
        emissivity,
        waterActivity,
        form.extent(),
        form.areaPerPerimeter(),
        form.taper(),
        SurfaceState.read(section.optional("surface"), facts),
        handling,
        facts);
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
        .orElseThrow(() -> entry.get().error(Spelling.oneOf(words, word)));
  }

  private CutKind handling(Entry entry, Food food) {
    String word = entry.text();
    facts.add(new Fact("handling", word));
    List<String> words = HANDLINGS.stream().map(CutKind::word).toList();
    if (!words.contains(word)) {
      throw entry.error(Spelling.oneOf(words, word));
    }
    CutKind handling = HANDLINGS.get(words.indexOf(word));
    if (!food.kinds(Optional.of(handling)).contains(handling)) {
      throw entry.error(
          "no handling beside food: " + food.word() + ", whose minimum it leaves as it is");
    }
    return handling;
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

  private double stated(String key, double otherwise) {
    Optional<Entry> entry = section.optional(key);
    String subject = key.replace('-', ' ');
    facts.add(
        new Fact(subject, entry.map(Entry::text).orElse(otherwise + " (not stated, so assumed)")));
    return entry.map(e -> e.quantity(Dimension.SHARE, 0.01, 1)).orElse(otherwise);
  }
}
