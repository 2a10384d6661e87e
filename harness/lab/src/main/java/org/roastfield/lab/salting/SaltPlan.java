package org.roastfield.lab.salting;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.core.salting.Salting;
import org.roastfield.core.shape.Shape;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.Food;

/** Salt on all faces of a cut of a cook file, some time before it goes on. Immutable. */
public final class SaltPlan {

  /** Hours at which the salt is shown. */
  public static final List<Double> HOURS = List.of(6.0, 12.0, 24.0, 48.0, 72.0);

  /** How long dry salt takes to draw water and go in [s]: two hours; assumed. */
  public static final double GOES_IN = 2 * 3600;

  /** How long is computed [s]: ten days. */
  public static final double COMPUTED = 10 * 86_400;

  /** Water of raw lean meat [kg/kg]; 0.70-0.75 in food tables, assumed for the cut. */
  public static final double WATER = 0.72;

  /** Diffusivity of salt in meat that was frozen over that in meat that was not. */
  public static final double THAWED = 1.3;

  /** Bounds of the diffusivity in cold meat over its middle: 1e-10 and 4e-10 m²/s; assumed. */
  private static final double SLOW = 1e-10 / Salting.COLD_MEAT;

  private static final double FAST = 4e-10 / Salting.COLD_MEAT;

  private final CookFile file;
  private final SaltWish wish;
  private final double depth;
  private final Salting salting;
  private final OptionalDouble slowHours;
  private final OptionalDouble fastHours;

  private SaltPlan(CookFile file, SaltWish wish, double depth) {
    this.file = file;
    this.wish = wish;
    this.depth = depth;
    this.salting = salting(file, wish, 1);
    this.slowHours = salting(file, wish, SLOW).hoursBefore(wish.evenness(), depth);
    this.fastHours = salting(file, wish, FAST).hoursBefore(wish.evenness(), depth);
  }

  /**
   * Computes the salt in a cut; of a taper in its thickest part.
   *
   * @throws IllegalArgumentException if the food is no meat, or the depth beyond the middle
   */
  public static SaltPlan of(CookFile file, SaltWish wish) {
    if (file.food() == Food.VEGETABLE) {
      throw new IllegalArgumentException(
          "food must be meat, whose diffusivity of salt is known, was vegetable");
    }
    double middle = file.cook().cut().shape().halfThickness();
    double depth = wish.depth().orElse(Math.min(SaltWish.USUAL_DEPTH, middle));
    if (!(depth > 0 && depth <= middle)) {
      throw new IllegalArgumentException(
          "depth must be above 0 and at most that of the middle, "
              + 1000 * middle
              + " mm, was "
              + 1000 * depth
              + " mm");
    }
    return new SaltPlan(file, wish, depth);
  }

  /** The same for what a cook file wishes for its plan, if it does. */
  public static Optional<SaltPlan> of(CookFile file) {
    return file.notes()
        .plan()
        .salt()
        .map(
            one ->
                of(file, new SaltWish(one.share(), one.depth(), SaltWish.USUAL_EVENNESS, false)));
  }

  private static Salting salting(CookFile file, SaltWish wish, double factor) {
    Shape shape = file.cook().cut().shape();
    double diffusivity = factor * (wish.thawed() ? THAWED : 1) * Salting.COLD_MEAT;
    double dose = wish.share() * density(file) * shape.volumePerArea();
    return Salting.of(shape, dose, diffusivity, GOES_IN, COMPUTED);
  }

  private static double density(CookFile file) {
    return file.cook().cut().material().density();
  }

  /** The cook file. */
  public CookFile file() {
    return file;
  }

  /** What was wished. */
  public SaltWish wish() {
    return wish;
  }

  /** How the salt spreads, by the middle diffusivity. */
  public Salting salting() {
    return salting;
  }

  /** Depth at which it is judged [m]. */
  public double depth() {
    return depth;
  }

  /** Depth of the middle [m]. */
  public double middle() {
    return file.cook().cut().shape().halfThickness();
  }

  /** Salt for the whole cut [kg], if its size is stated. */
  public OptionalDouble mass() {
    OptionalDouble whole = file.mass();
    return whole.isPresent()
        ? OptionalDouble.of(wish.share() * whole.getAsDouble())
        : OptionalDouble.empty();
  }

  /** Hours before the cut goes on; empty if ten days are not enough. */
  public OptionalDouble hours() {
    return salting.hoursBefore(wish.evenness(), depth);
  }

  /** The same if salt is as slow as it may be. */
  public OptionalDouble slowHours() {
    return slowHours;
  }

  /** The same if salt is as fast as it may be. */
  public OptionalDouble fastHours() {
    return fastHours;
  }

  /** The same for the middle of the cut. */
  public OptionalDouble middleHours() {
    return salting.hoursBefore(wish.evenness());
  }

  /** Clock time at which to put the salt on. */
  public LocalDateTime clock(double hours) {
    return file.starts().minusSeconds(Math.round(3600 * hours));
  }

  /**
   * Salt in the meat there [kg/kg of raw meat].
   *
   * @param below depth below the face [m]
   * @param hours since it was put on
   */
  public double share(double below, double hours) {
    return salting.at(middle() - below, 3600 * hours) / density(file);
  }

  /** Water activity of the meat there, from that which the file states for the surface. */
  public double waterActivity(double below, double hours) {
    double raw = file.stages().get(0).upper().waterActivity();
    double content = Math.max(0, share(below, hours));
    return Salting.waterActivity(raw, content, WATER);
  }

  /** What the numbers rest on. */
  public static List<String> restsOn() {
    return List.of(
        "diffusivity of salt in cold meat 2.2e-10 m²/s, 1 to 4e-10 for the span of hours [assumed:"
            + " from memory of literature on pork and beef]",
        "thawed meat takes it up 1.3 times as fast [literature: a tomography study of hams]",
        "salt is on all faces, goes in within two hours, and none runs off [assumed]",
        "raw meat is 72 % water, and each kilogram of salt in a kilogram of water lowers its"
            + " activity by 0.6 [assumed: from memory]");
  }

  /** What to know beside the numbers. */
  public static List<String> cautions() {
    return List.of(
        "Meat under salt belongs in the fridge all the time, below 4 °C; days under salt do not make"
            + " raw meat keep.",
        "Salt makes some bacteria bear more heat: published hold times are for meat with little of"
            + " it. Local food codes and trained people decide.",
        "Salt hardens actin sooner, and meat with 1 to 2 % of it loses 3 to 6 points less juice by"
            + " judgement; a computed cook knows of neither.");
  }
}
