package org.roastfield.lab.synthetic;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.material.ChoiOkos;
import org.roastfield.core.material.Composition;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Materials;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.shape.Taper;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.Extent;

/** The cuts of the boathouse supper. Sizes and temperatures are made up. */
public enum ScenarioCut {
  /** A boned loin, long and round. */
  PORK_LOIN("pork", "pork loin", 110, 52, 240, 25),
  /** A thick steak. */
  BISON_STRIP("beef", "bison", 105, 47, 180, 10),
  /** A rolled leg that tapers. */
  LAMB_LEG("lamb", "lamb leg", 115, 54, 240, 25),
  /** Half a breast, near a sphere. */
  TURKEY_BREAST("poultry", "turkey breast", 160, 66, 0, 20),
  /** A whole beet, for the physics without protein. */
  BEETROOT("vegetable", "beetroot", 180, 88, 0, 10);

  /** What a slab of this width and length [m] has edges of. */
  private static final double STRIP_WIDTH = 0.22;

  private static final double STRIP_LENGTH = 0.30;
  private static final double LOIN_LENGTH = 0.31;
  private static final Taper LEG = Taper.between(0.110, 0.060, 0.300);

  private final String food;
  private final String material;
  private final int setting;
  private final int pull;
  private final int sear;
  private final int restMinutes;

  ScenarioCut(String food, String material, int setting, int pull, int sear, int restMinutes) {
    this.food = food;
    this.material = material;
    this.setting = setting;
    this.pull = pull;
    this.sear = sear;
    this.restMinutes = restMinutes;
  }

  /** As files write it, such as "pork-loin". */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Cut of a word, if it is one. */
  public static Optional<ScenarioCut> of(String word) {
    return Arrays.stream(values()).filter(cut -> cut.word().equals(word)).findFirst();
  }

  /** What it is made of, as the catalogue has it. */
  public Material material() {
    return Materials.named(material).material();
  }

  /** Name of the material in the catalogue. */
  String materialName() {
    return material;
  }

  /** Kind of food, as cook files write it. */
  String food() {
    return food;
  }

  /** Usual setting of the chamber [°C]. */
  public int setting() {
    return setting;
  }

  /** Core at which it comes off the gentle heat [°C]. */
  public int pull() {
    return pull;
  }

  /** Length of the sear [s]; 0 for none. */
  int sear() {
    return sear;
  }

  /** Length of the rest [min]. */
  int restMinutes() {
    return restMinutes;
  }

  /** Shape as a ruler has it: what a fit starts from. */
  public Shape shape() {
    return switch (this) {
      case PORK_LOIN -> Cylinder.ofDiameter(0.096);
      case BISON_STRIP -> Slab.ofThickness(0.055);
      case LAMB_LEG -> LEG.stations(Taper.THIRDS).get(0).crossSection();
      case TURKEY_BREAST -> Sphere.ofDiameter(0.148);
      case BEETROOT -> Sphere.ofDiameter(0.084);
    };
  }

  /** The same in a cook file. */
  String shapeInFile() {
    return switch (this) {
      case PORK_LOIN -> "  shape: cylinder\n  diameter: 96 mm\n  length: 310 mm\n";
      case BISON_STRIP -> "  shape: slab\n  thickness: 55 mm\n  width: 220 mm\n  length: 300 mm\n";
      case LAMB_LEG -> "  shape: taper\n  diameters: [110 mm, 60 mm]\n  length: 300 mm\n";
      case TURKEY_BREAST -> "  shape: sphere\n  diameter: 148 mm\n";
      case BEETROOT -> "  shape: sphere\n  diameter: 84 mm\n";
    };
  }

  /**
   * True shape.
   *
   * @param size factor of every length
   * @param isFinite whether heat enters the ends and edges too
   * @param position where along a taper the probe sits, as a share of its length from the thick
   *     end; NaN for the station of {@link #shape()}
   */
  Shape trueShape(double size, boolean isFinite, double position) {
    return switch (this) {
      case PORK_LOIN ->
          isFinite
              ? Compact.ofCylinder(0.096, LOIN_LENGTH, Compact.TYPICAL_BIOT_NUMBER).scaled(size)
              : Cylinder.ofDiameter(size * 0.096);
      case BISON_STRIP ->
          isFinite
              ? Compact.ofBox(0.055, STRIP_WIDTH, STRIP_LENGTH, Compact.TYPICAL_BIOT_NUMBER)
                  .scaled(size)
              : Slab.ofThickness(size * 0.055);
      case LAMB_LEG ->
          Cylinder.ofDiameter(
              size
                  * (Double.isNaN(position)
                      ? shape().thickness()
                      : LEG.diameterAt(position * LEG.length())));
      case TURKEY_BREAST, BEETROOT -> Sphere.ofDiameter(size * shape().thickness());
    };
  }

  /**
   * The whole cut, ends and edges included where heat enters them; empty for the leg, of whose
   * stations only one is computed.
   *
   * @param size factor of every length
   * @param isFinite whether heat enters the ends and edges too
   */
  Optional<Extent> whole(double size, boolean isFinite) {
    Shape shape = trueShape(size, isFinite, Double.NaN);
    double thickness = shape.thickness();
    if (shape instanceof Compact piece) {
      return Optional.of(extent(piece.area(), piece.area() * piece.volumePerArea()));
    }
    return switch (this) {
      case PORK_LOIN -> {
        double side = Math.PI * thickness * size * LOIN_LENGTH;
        yield Optional.of(extent(side, side * thickness / 4));
      }
      case BISON_STRIP -> {
        double face = size * STRIP_WIDTH * size * STRIP_LENGTH;
        yield Optional.of(extent(face, face * thickness));
      }
      case LAMB_LEG -> Optional.empty();
      case TURKEY_BREAST, BEETROOT -> {
        double surface = Math.PI * thickness * thickness;
        yield Optional.of(extent(surface, surface * thickness / 6));
      }
    };
  }

  private Extent extent(double area, double volume) {
    double start = Temperatures.celsius(TrueValues.STATED_START);
    return new Extent(area, volume * ChoiOkos.density(composition(), start));
  }

  /** Share of its mass that is water. */
  double water() {
    return composition().water();
  }

  private Composition composition() {
    return Materials.named(material).composition();
  }

  /** Whether a departure makes a difference to this cut. */
  public boolean allows(Departure departure) {
    return switch (departure) {
      case FINITE_LENGTH -> this == PORK_LOIN || this == BISON_STRIP;
      case TAPER -> this == LAMB_LEG;
      default -> true;
    };
  }
}
