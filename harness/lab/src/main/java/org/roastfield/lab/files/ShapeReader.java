package org.roastfield.lab.files;

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

/** Reads the shape of a cut and its sizes. */
final class ShapeReader {

  private static final List<String> NAMES =
      List.of("slab", "cylinder", "sphere", "finite-cylinder", "box", "taper");

  private static final List<String> SIZES =
      List.of("thickness", "diameter", "diameters", "length", "width", "biot-number");

  private static final double SMALLEST = 0.001;
  private static final double THICKEST = 1;
  private static final double LONGEST = 5;

  private final Section section;
  private final List<Fact> facts;
  private final Entry entry;
  private final Optional<Taper> taper;
  private final Shape shape;

  /**
   * @param section of the cut
   * @param facts that the shape's are added to
   */
  ShapeReader(Section section, List<Fact> facts) {
    this.section = section;
    this.facts = facts;
    this.entry = section.required("shape");
    facts.add(new Fact("shape", entry.text()));
    this.taper = entry.text().equals("taper") ? Optional.of(readTaper()) : Optional.empty();
    this.shape = taper.map(this::thickest).orElseGet(this::read);
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
  Optional<Extent> extent(double density) {
    if (taper.isPresent()) {
      return Optional.empty();
    }
    return area().map(area -> new Extent(area, area * volumePerArea() * density));
  }

  /** Area over perimeter of a slab's face [m], if its length and width are stated. */
  Optional<Double> areaPerPerimeter() {
    return shape instanceof Slab && section.has("length") && section.has("width")
        ? Optional.of(0.5 / (1 / side("length") + 1 / side("width")))
        : Optional.empty();
  }

  private double side(String key) {
    return section.quantity(key, Dimension.LENGTH, SMALLEST, LONGEST);
  }

  private Shape read() {
    return switch (entry.text()) {
      case "slab" -> {
        allow("thickness", "length", "width");
        yield Slab.ofThickness(size("thickness"));
      }
      case "cylinder" -> {
        allow("diameter", "length");
        yield Cylinder.ofDiameter(size("diameter"));
      }
      case "sphere" -> {
        allow("diameter");
        yield Sphere.ofDiameter(size("diameter"));
      }
      case "finite-cylinder" -> {
        allow("diameter", "length", "biot-number");
        yield Compact.ofCylinder(size("diameter"), length(), biotNumber());
      }
      case "box" -> {
        allow("thickness", "width", "length", "biot-number");
        yield Compact.ofBox(size("thickness"), size("width"), length(), biotNumber());
      }
      default -> throw entry.error(Spelling.oneOf(NAMES, entry.text()));
    };
  }

  private Taper readTaper() {
    allow("diameters", "length");
    Entry list = section.required("diameters");
    List<Entry> items = list.items();
    facts.add(new Fact("diameters", String.join(", ", items.stream().map(Entry::text).toList())));
    List<Double> diameters =
        items.stream().map(item -> item.quantity(Dimension.LENGTH, SMALLEST, THICKEST)).toList();
    double length = length();
    return list.guard(() -> new Taper(diameters, length));
  }

  private Shape thickest(Taper piece) {
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
                "cross-sections in the middles of the thirds; the timeline is that of the thickest, %.1f"
                    + " mm across",
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

  private double size(String key) {
    return stated(key, THICKEST);
  }

  private double length() {
    return stated("length", LONGEST);
  }

  private double stated(String key, double largest) {
    Entry stated = section.required(key);
    facts.add(new Fact(key, stated.text()));
    return stated.quantity(Dimension.LENGTH, SMALLEST, largest);
  }

  private double biotNumber() {
    Optional<Entry> stated = section.optional("biot-number");
    facts.add(
        new Fact(
            "Biot number of the shape",
            stated
                .map(Entry::text)
                .orElse(Compact.TYPICAL_BIOT_NUMBER + " (not stated, so assumed)")));
    return stated
        .map(
            number ->
                number.quantity(
                    Dimension.RATIO, Compact.LOWEST_BIOT_NUMBER, Compact.HIGHEST_BIOT_NUMBER))
        .orElse(Compact.TYPICAL_BIOT_NUMBER);
  }

  /** A slab's area is that of one face, which has the whole thickness behind it. */
  private double volumePerArea() {
    return shape instanceof Slab ? shape.thickness() : shape.volumePerArea();
  }

  private Optional<Double> area() {
    if (shape instanceof Compact compact) {
      return Optional.of(compact.area());
    }
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

  private Optional<Double> sideLength(String key) {
    return section.has(key) ? Optional.of(stated(key, LONGEST)) : Optional.empty();
  }
}
