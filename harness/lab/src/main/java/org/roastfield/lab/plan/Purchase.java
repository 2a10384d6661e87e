package org.roastfield.lab.plan;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.outcome.Juice;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.PlanWishes;

/**
 * How much to buy for the plates that are to be filled.
 *
 * @param people how many
 * @param portion for one, cooked and carved [kg]
 * @param trim share of the bought weight that is cut off
 * @param bone share of what is cooked that is bone
 * @param yield what is left of boneless raw weight after the cook, by its estimate
 */
public record Purchase(int people, double portion, double trim, double bone, double yield) {

  /**
   * A portion if nothing is said, cooked [kg]: a main dish, about twice the 85 g that nutrition
   * labels in the United States count as one serving of cooked meat (21 CFR 101.12, from memory);
   * assumed.
   */
  public static final double PORTION = 0.170;

  /** Share cut off if nothing is said: silver skin and loose fat; assumed. */
  public static final double TRIM = 0.05;

  /** Bone if nothing is said: the catalogue's cuts have none. */
  public static final double BONE = 0;

  /**
   * @throws IllegalArgumentException if a share leaves nothing, or a number is not positive
   */
  public Purchase {
    check("people", people);
    check("portion", portion);
    check("1 - trim", 1 - trim);
    check("1 - bone", 1 - bone);
    check("yield", yield);
  }

  private static void check(String name, double value) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + " must be greater than 0, was " + value);
    }
  }

  /** For the plates of a cook file, by the cook that is expected; empty without one of them. */
  static Optional<Purchase> of(CookFile file, Optional<SimulationResult> expected) {
    return expected.flatMap(
        result -> file.notes().plan().plates().map(plates -> of(plates, left(file, result))));
  }

  private static double left(CookFile file, SimulationResult result) {
    Moisture moisture = file.moisture();
    return file.extent()
        .map(extent -> extent.juice(result, moisture))
        .orElseGet(() -> Juice.of(result, moisture))
        .left();
  }

  /** What a cook file wishes, with what it leaves unsaid assumed. */
  public static Purchase of(PlanWishes.Plates plates, double yield) {
    return new Purchase(
        plates.people(),
        or(plates.portion(), PORTION),
        or(plates.trim(), TRIM),
        or(plates.bone(), BONE),
        yield);
  }

  private static double or(OptionalDouble stated, double otherwise) {
    return stated.orElse(otherwise);
  }

  /** Weight to buy [kg]. */
  public double bought() {
    return people * portion / (yield * (1 - bone) * (1 - trim));
  }

  /** The same rounded up, so that it is enough, to 0.1 kg. */
  double boughtInFull() {
    return Math.ceil(10 * bought() - 1e-9) / 10;
  }

  /** What to buy in a few words, rounded up, such as "3.3 kg raw for 10 people". */
  String words() {
    return String.format(
        Locale.ROOT,
        "%.1f kg raw for %d %s",
        boughtInFull(),
        people,
        people == 1 ? "person" : "people");
  }

  /** Weight to put on, trimmed, with its bone [kg]. */
  public double cooked() {
    return bought() * (1 - trim);
  }

  /** That the cut of a file does not feed them all; empty if it does, or its weight is unknown. */
  Optional<Unmet> problem(CookFile file) {
    OptionalDouble mass = file.mass();
    if (mass.isEmpty() || fedBy(mass.getAsDouble()) >= people) {
      return Optional.empty();
    }
    int fed = fedBy(mass.getAsDouble());
    String text =
        String.format(
            Locale.ROOT,
            "this cut, %.2f kg trimmed, feeds %d of %d. Times and readings here are for it: buy %s and"
                + " write its sizes into the file, or cook more than one",
            mass.getAsDouble(),
            fed,
            people,
            words());
    return Optional.of(
        new Unmet("TOO_FEW_PLATES", people, fed, new PlanLine("Too little meat", text + ".", "")));
  }

  /** How many people a trimmed cut feeds. */
  public int fedBy(double mass) {
    return (int) Math.floor(mass * (1 - bone) * yield / portion + 1e-9);
  }
}
