package org.roastfield.lab.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.shape.Taper;

/**
 * Reads the shape of a cut from its sizes, or from its weight and all sizes but one. Stated lengths
 * decide what is computed; a weight beside all of them is checked against them.
 */
final class ShapeReader {

  static final double SMALLEST = 0.001;

  private static final List<String> NAMES =
      List.of("slab", "cylinder", "sphere", "finite-cylinder", "box", "taper");

  private static final List<String> SIZES =
      List.of(
          "thickness",
          "diameter",
          "girth",
          "diameters",
          "girths",
          "length",
          "width",
          "weight",
          "biot-number");

  private static final double THICKEST = 1;
  private static final double LONGEST = 5;

  /** How far a diameter and a girth may be from each other; assumed, as a cut may be oval. */
  private static final double ROUNDNESS = 0.1;

  private final Section section;
  private final List<Fact> facts;
  private final Entry entry;
  private final Bulk bulk;
  private final Shape shape;
  private Optional<Taper> taper = Optional.empty();
  private Optional<Extent> extent = Optional.empty();
  private Optional<Double> areaPerPerimeter = Optional.empty();

  /**
   * @param section of the cut
   * @param density of the food at its start temperature [kg/m³]
   * @param facts that the shape's are added to
   */
  ShapeReader(Section section, double density, List<Fact> facts) {
    this.section = section;
    this.facts = facts;
    this.entry = section.required("shape");
    facts.add(new Fact("shape", entry.text()));
    this.bulk = new Bulk(section, density, facts);
    this.shape = read();
  }

  /** What is computed: of a taper the thickest station. */
  Shape shape() {
    return shape;
  }

  /** The piece, if it is a taper. */
  Optional<Taper> taper() {
    return taper;
  }

  /** Size of the whole cut; none of a taper, whose stations lose different amounts of water. */
  Optional<Extent> extent() {
    return extent;
  }

  /** Area over perimeter of a slab's face [m], if its length and width are known. */
  Optional<Double> areaPerPerimeter() {
    return areaPerPerimeter;
  }

  private Shape read() {
    return switch (entry.text()) {
      case "slab" -> slab();
      case "cylinder" -> cylinder();
      case "sphere" -> sphere();
      case "finite-cylinder" -> finiteCylinder();
      case "box" -> box();
      case "taper" -> taperOfStations();
      default -> throw entry.error(Spelling.oneOf(NAMES, entry.text()));
    };
  }

  private Slab slab() {
    allow("thickness", "length", "width", "weight");
    Optional<Double> stated = size("thickness", THICKEST);
    Optional<Double> length = size("length", LONGEST);
    Optional<Double> width = size("width", LONGEST);
    Optional<Double> area = length.flatMap(l -> width.map(w -> l * w));
    double thickness =
        stated
            .or(() -> fromWeight(area).map(t -> bulk.solved("thickness", t, THICKEST)))
            .orElseThrow(() -> missing("thickness", "weight, length and width"));
    if (stated.isPresent()) {
      area.ifPresent(a -> bulk.check("a slab of these sizes", a * thickness));
    }
    Optional<Double> whole = area.or(() -> fromWeight(Optional.of(thickness)));
    extent = whole.map(a -> bulk.extent(a, a * thickness));
    Optional<Double> otherWidth = width.or(() -> otherSide("width", whole, length));
    Optional<Double> otherLength = length.or(() -> otherSide("length", whole, width));
    areaPerPerimeter = otherLength.flatMap(l -> otherWidth.map(w -> 0.5 / (1 / l + 1 / w)));
    return Slab.ofThickness(thickness);
  }

  private Optional<Double> otherSide(String name, Optional<Double> area, Optional<Double> side) {
    return area.flatMap(a -> side.map(s -> bulk.solved(name, a / s, LONGEST)));
  }

  /** Volume of the weight over an area or a length, if both are known. */
  private Optional<Double> fromWeight(Optional<Double> divisor) {
    return bulk.isStated() ? divisor.map(d -> bulk.volume() / d) : Optional.empty();
  }

  private Cylinder cylinder() {
    allow("diameter", "girth", "length", "weight");
    Optional<Double> stated = diameter();
    Optional<Double> length = size("length", LONGEST);
    double diameter = roundDiameter(stated, length);
    Optional<Double> whole = roundLength(diameter, length);
    extent = whole.map(l -> bulk.extent(Math.PI * diameter * l, circle(diameter) * l));
    return Cylinder.ofDiameter(diameter);
  }

  private Compact finiteCylinder() {
    allow("diameter", "girth", "length", "weight", "biot-number");
    Optional<Double> stated = diameter();
    Optional<Double> length = size("length", LONGEST);
    double diameter = roundDiameter(stated, length);
    double whole = roundLength(diameter, length).orElseThrow(() -> missing("length", "weight"));
    return compact(
        biotNumber()
            .map(biot -> Compact.ofCylinder(diameter, whole, biot))
            .orElseGet(() -> Compact.ofCylinder(diameter, whole)));
  }

  /** Diameter as stated, by the girth, or of a round piece of this weight and length. */
  private double roundDiameter(Optional<Double> stated, Optional<Double> length) {
    double diameter =
        stated
            .or(
                () ->
                    fromWeight(length)
                        .map(area -> Math.sqrt(4 / Math.PI * area))
                        .map(d -> bulk.solved("diameter", d, THICKEST)))
            .orElseThrow(() -> missing("diameter", "girth, or weight and length"));
    if (stated.isPresent()) {
      length.ifPresent(l -> bulk.check("a cylinder of these sizes", circle(diameter) * l));
    }
    return diameter;
  }

  private Optional<Double> roundLength(double diameter, Optional<Double> length) {
    return length.or(
        () ->
            fromWeight(Optional.of(circle(diameter))).map(l -> bulk.solved("length", l, LONGEST)));
  }

  private Sphere sphere() {
    allow("diameter", "girth", "weight");
    Optional<Double> stated = diameter();
    double diameter =
        stated
            .or(
                () ->
                    fromWeight(Optional.of(Math.PI / 6))
                        .map(Math::cbrt)
                        .map(d -> bulk.solved("diameter", d, THICKEST)))
            .orElseThrow(() -> missing("diameter", "girth, or weight"));
    double volume = Math.PI / 6 * diameter * diameter * diameter;
    stated.ifPresent(d -> bulk.check("a sphere of this size", volume));
    extent = Optional.of(bulk.extent(Math.PI * diameter * diameter, volume));
    return Sphere.ofDiameter(diameter);
  }

  private Compact box() {
    allow("thickness", "width", "length", "weight", "biot-number");
    List<String> names = List.of("thickness", "width", "length");
    List<Optional<Double>> sizes =
        List.of(size("thickness", THICKEST), size("width", THICKEST), size("length", LONGEST));
    double[] sides = new double[3];
    for (int i = 0; i < 3; i++) {
      Optional<Double> b = sizes.get((i + 1) % 3);
      Optional<Double> others = sizes.get((i + 2) % 3).flatMap(a -> b.map(c -> a * c));
      String name = names.get(i);
      double largest = i == 2 ? LONGEST : THICKEST;
      sides[i] =
          sizes
              .get(i)
              .or(() -> fromWeight(others).map(s -> bulk.solved(name, s, largest)))
              .orElseThrow(() -> missing(name, "weight and the other two sizes"));
    }
    if (sizes.stream().allMatch(Optional::isPresent)) {
      bulk.check("a box of these sizes", sides[0] * sides[1] * sides[2]);
    }
    return compact(
        biotNumber()
            .map(biot -> Compact.ofBox(sides[0], sides[1], sides[2], biot))
            .orElseGet(() -> Compact.ofBox(sides[0], sides[1], sides[2])));
  }

  private Compact compact(Compact piece) {
    double area = piece.area();
    extent = Optional.of(bulk.extent(area, area * piece.volumePerArea()));
    return piece;
  }

  private Cylinder taperOfStations() {
    allow("diameters", "girths", "length", "weight");
    Entry list = alongTaper();
    boolean girths = section.has("girths");
    List<Entry> items = list.items();
    double most = girths ? Math.PI * THICKEST : THICKEST;
    List<Double> diameters = new ArrayList<>();
    for (Entry item : items) {
      double across = item.quantity(Dimension.LENGTH, SMALLEST, most);
      diameters.add(girths ? across / Math.PI : across);
    }
    facts.add(
        new Fact(
            girths ? "girths" : "diameters",
            String.join(", ", items.stream().map(Entry::text).toList())));
    Optional<Double> stated = size("length", LONGEST);
    double perLength = list.guard(() -> new Taper(diameters, 1)).volume();
    double length =
        stated
            .or(
                () ->
                    fromWeight(Optional.of(perLength)).map(l -> bulk.solved("length", l, LONGEST)))
            .orElseThrow(() -> missing("length", "weight"));
    stated.ifPresent(l -> bulk.check("a taper of these sizes", perLength * l));
    Taper piece = new Taper(diameters, length);
    taper = Optional.of(piece);
    return thickest(piece);
  }

  private Entry alongTaper() {
    Optional<Entry> girths = section.optional("girths");
    if (girths.isPresent() && section.has("diameters")) {
      throw girths.get().error("either diameters or girths");
    }
    return girths
        .or(() -> section.optional("diameters"))
        .orElseThrow(() -> missing("diameters", "girths"));
  }

  private Cylinder thickest(Taper piece) {
    Cylinder thickest =
        piece.stations(Taper.THIRDS).stream()
            .map(Taper.Station::crossSection)
            .max(Comparator.comparingDouble(Cylinder::radius))
            .orElseThrow();
    facts.add(
        new Fact(
            "computed as",
            String.format(
                Locale.ROOT,
                "cross-sections in the middles of the thirds; the timeline is that of the thickest,"
                    + " %.1f mm across",
                1000 * thickest.thickness())));
    return thickest;
  }

  private void allow(String... fit) {
    for (String key : SIZES) {
      Optional<Entry> found = section.optional(key);
      if (found.isPresent() && !List.of(fit).contains(key)) {
        throw found.get().error("no " + key + " for a " + entry.text());
      }
    }
  }

  private Optional<Double> size(String key, double largest) {
    Optional<Entry> stated = section.optional(key);
    stated.ifPresent(size -> facts.add(new Fact(key, size.text())));
    return stated.map(size -> size.quantity(Dimension.LENGTH, SMALLEST, largest));
  }

  /** Diameter as stated, or of the stated girth; both must be those of a roughly round cut. */
  private Optional<Double> diameter() {
    Optional<Double> across = size("diameter", THICKEST);
    Optional<Double> around = size("girth", Math.PI * THICKEST).map(girth -> girth / Math.PI);
    if (across.isPresent() && around.isPresent()) {
      double ratio = across.get() / around.get();
      if (!(ratio <= 1 + ROUNDNESS && ratio >= 1 / (1 + ROUNDNESS))) {
        throw section
            .required("girth")
            .error(
                String.format(
                    Locale.ROOT,
                    "about %.0f mm, that of a round cut %.0f mm across (within 10 %%)",
                    1000 * Math.PI * across.get(),
                    1000 * across.get()));
      }
    }
    return across.or(() -> around);
  }

  private CookFileException missing(String key, String instead) {
    return section.missing(key, "it, or " + instead + " instead");
  }

  private static double circle(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }

  private Optional<Double> biotNumber() {
    Optional<Entry> stated = section.optional("biot-number");
    facts.add(
        new Fact(
            "Biot number of the shape",
            stated.map(Entry::text).orElse("0.5-5 (not stated, so made for all of these)")));
    return stated.map(
        number ->
            number.quantity(
                Dimension.RATIO, Compact.LOWEST_BIOT_NUMBER, Compact.HIGHEST_BIOT_NUMBER));
  }
}
