package org.roastfield.core.integration;

import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.surface.RememberingLaw;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * How a cook's own numbers change with one parameter p: quotients of the differences between two
 * cooks, at p on both sides of the point. Immutable.
 *
 * <p>Everything is compared on the grid over ξ of the cook at the point.
 */
public final class CookVariation {

  private final Cook above;
  private final Cook below;
  private final boolean twoSided;
  private final double perWidth;
  private final ScaledMaterial materialAbove;
  private final ScaledMaterial materialBelow;
  private final boolean properties;
  private final boolean[][] laws;

  private final double shareAbove;

  private CookVariation(Cook cook, Cook above, Cook below, double width) {
    this.above = above;
    this.below = below;
    this.twoSided = !cook.isSymmetric();
    this.perWidth = 1 / width;
    this.shareAbove = above.equals(cook) ? 0 : below.equals(cook) ? 1 : 0.5;
    this.materialAbove = new ScaledMaterial(above.cut().material());
    this.materialBelow = new ScaledMaterial(below.cut().material());
    this.properties =
        !(materialAbove.isConstant() && materialBelow.isConstant())
            && !above.cut().material().equals(below.cut().material());
    this.laws = new boolean[cook.stages().size()][2];
    for (int i = 0; i < laws.length; i++) {
      laws[i][State.UPPER] = !lawAbove(i, State.UPPER).equals(lawBelow(i, State.UPPER));
      laws[i][State.LOWER] = !lawAbove(i, State.LOWER).equals(lawBelow(i, State.LOWER));
    }
  }

  /**
   * Variation of a cook.
   *
   * @param cook at the point
   * @param above at a higher value of the parameter, or the point's
   * @param below at a lower value of the parameter, or the point's
   * @param width difference of the parameter between the two, greater than 0
   * @throws IllegalArgumentException if the cooks differ in more than numbers
   */
  public static CookVariation of(Cook cook, Cook above, Cook below, double width) {
    checkAlike(cook, above);
    checkAlike(cook, below);
    return new CookVariation(cook, above, below, width);
  }

  private static void checkAlike(Cook cook, Cook other) {
    Shape shape = cook.cut().shape();
    Shape otherShape = other.cut().shape();
    boolean alike =
        shape.getClass() == otherShape.getClass() && shape.exponent() == otherShape.exponent();
    check(alike, "kind of shape", shape, otherShape);
    boolean constant = cook.cut().material().isConstant();
    boolean otherConstant = other.cut().material().isConstant();
    check(constant == otherConstant, "constancy of properties", constant, otherConstant);
    boolean symmetric = cook.isSymmetric();
    check(symmetric == other.isSymmetric(), "treatment all round", symmetric, !symmetric);
    List<Stage> stages = cook.stages();
    List<Stage> others = other.stages();
    check(stages.size() == others.size(), "number of stages", stages.size(), others.size());
    for (int i = 0; i < stages.size(); i++) {
      StageEnd end = stages.get(i).end();
      StageEnd otherEnd = others.get(i).end();
      check(end.getClass() == otherEnd.getClass(), "kind of end rule", end, otherEnd);
    }
  }

  private static void check(boolean alike, String what, Object expected, Object found) {
    if (!alike) {
      throw new IllegalArgumentException(
          "cooks near the point must have its "
              + what
              + ", that of "
              + expected
              + ", was "
              + found);
    }
  }

  /** d ln(α₀/ℓ²)/dp. */
  double logTimeScale() {
    double a = timeScale(above, materialAbove);
    double b = timeScale(below, materialBelow);
    return 2 * (a - b) / (a + b) * perWidth;
  }

  private static double timeScale(Cook cook, ScaledMaterial material) {
    double length = CookIntegration.length(cook);
    return material.diffusivity() / (length * length);
  }

  /** d ln ℓ/dp. */
  double logLength() {
    double a = lengthAbove();
    double b = lengthBelow();
    return 2 * (a - b) / (a + b) * perWidth;
  }

  /** What ξ = 1 stands for in the cook above [m]. */
  double lengthAbove() {
    return CookIntegration.length(above);
  }

  /** What ξ = 1 stands for in the cook below [m]. */
  double lengthBelow() {
    return CookIntegration.length(below);
  }

  /** Change with p of the water that is put on a face when a stage begins [kg/m²]. */
  double poured(int stage, int face) {
    return (poured(above, stage, face) - poured(below, stage, face)) * perWidth;
  }

  private static double poured(Cook cook, int stage, int face) {
    Wetting wetting = cook.stages().get(stage).wetting();
    return face == State.UPPER ? wetting.upper() : wetting.lower();
  }

  /** Change with p of the water that a face holds before a stage, its first with memory [kg/m²]. */
  double initialWater(int stage, int face) {
    return (initialAbove(stage, face) - initialBelow(stage, face)) * perWidth;
  }

  private double initialAbove(int stage, int face) {
    return CutWater.of(above.cut()).initial(remembering(lawAbove(stage, face)));
  }

  private double initialBelow(int stage, int face) {
    return CutWater.of(below.cut()).initial(remembering(lawBelow(stage, face)));
  }

  /** Most that a face is fed in the cook above, if a stage is its first with memory [kg/m²]. */
  double mostFedAbove(int stage, int face) {
    return CutWater.of(above.cut()).mostFed(initialAbove(stage, face));
  }

  /** Most that a face is fed in the cook below, if a stage is its first with memory [kg/m²]. */
  double mostFedBelow(int stage, int face) {
    return CutWater.of(below.cut()).mostFed(initialBelow(stage, face));
  }

  /** Whether the water of the cut behind its faces changes with p. */
  boolean changesWater() {
    return !CutWater.of(above.cut()).isAs(CutWater.of(below.cut()));
  }

  /** Change with p of the humidity of air around a face before it fills with vapour [kg/kg]. */
  double humidityWithout(int stage, int face, double time) {
    return (remembering(lawAbove(stage, face)).humidityWithout(time)
            - remembering(lawBelow(stage, face)).humidityWithout(time))
        * perWidth;
  }

  /** A law of a face that remembers at the point, near which it does too. */
  static RememberingLaw remembering(SurfaceLaw law) {
    if (law instanceof RememberingLaw remembering) {
      return remembering;
    }
    throw new IllegalArgumentException(
        "laws near the point must carry water along as that of the point does, was " + law);
  }

  /** d ln(ℓ/k₀)/dp. */
  double logFaceResistance() {
    double a = CookIntegration.length(above) / materialAbove.conductivity();
    double b = CookIntegration.length(below) / materialBelow.conductivity();
    return 2 * (a - b) / (a + b) * perWidth;
  }

  /** dT/dp at the start [K per unit of p]. */
  double start() {
    return (above.cut().startTemperature() - below.cut().startTemperature()) * perWidth;
  }

  ScaledMaterial materialAbove() {
    return materialAbove;
  }

  ScaledMaterial materialBelow() {
    return materialBelow;
  }

  /** Whether u(T) or φ(T) changes with p. */
  boolean changesProperties() {
    return properties;
  }

  /** ∂u/∂p at a temperature [K per unit of p]. */
  double enthalpy(double temperature) {
    return (materialAbove.enthalpy(temperature) - materialBelow.enthalpy(temperature)) * perWidth;
  }

  /** ∂(du/dT)/∂p at a temperature [1 per unit of p]. */
  double enthalpySlope(double temperature) {
    double a = materialAbove.enthalpySlope(temperature);
    return (a - materialBelow.enthalpySlope(temperature)) * perWidth;
  }

  /** ∂φ/∂p at a temperature [K per unit of p]. */
  double kirchhoff(double temperature) {
    return (materialAbove.kirchhoff(temperature) - materialBelow.kirchhoff(temperature)) * perWidth;
  }

  /** Whether the cut changes with p. */
  boolean changesCut() {
    return start() != 0
        || logTimeScale() != 0
        || logFaceResistance() != 0
        || properties
        || changesWater();
  }

  /** Whether a law of a stage may change with p. */
  boolean changesLaw(int stage) {
    return laws[stage][State.UPPER] || laws[stage][State.LOWER];
  }

  /** Whether the law of a face may change with p: laws of records that are equal do not. */
  boolean changesLaw(int stage, int face) {
    return laws[stage][face];
  }

  SurfaceLaw lawAbove(int stage, int face) {
    return law(above, stage, face);
  }

  SurfaceLaw lawBelow(int stage, int face) {
    return law(below, stage, face);
  }

  private static SurfaceLaw law(Cook cook, int stage, int face) {
    Stage s = cook.stages().get(stage);
    return face == State.UPPER ? s.upper() : s.lower();
  }

  /** How far above the point the higher of the two cooks is, as p. */
  double riseAbove() {
    return shareAbove / perWidth;
  }

  /** How far below the point the lower of the two cooks is, as p. */
  double fallBelow() {
    return (1 - shareAbove) / perWidth;
  }

  /** 1 over the difference of p between the two cooks. */
  double perWidth() {
    return perWidth;
  }

  /**
   * Change with p of what ends a stage: its duration [s], its time [s], or the temperature that is
   * waited for [K].
   */
  double target(int stage) {
    return (target(above.stages().get(stage).end()) - target(below.stages().get(stage).end()))
        * perWidth;
  }

  private static double target(StageEnd end) {
    if (end instanceof StageEnd.After after) {
      return after.duration();
    }
    if (end instanceof StageEnd.At at) {
      return at.time();
    }
    if (end instanceof StageEnd.Rises rises) {
      return rises.temperature();
    }
    return ((StageEnd.Falls) end).temperature();
  }

  /** dξ/dp of the probe that a stage waits for; 0 if it waits for none. */
  double awaitedPlace(int stage) {
    Probe a = awaited(above.stages().get(stage).end());
    Probe b = awaited(below.stages().get(stage).end());
    return place(a, b);
  }

  private static Probe awaited(StageEnd end) {
    if (end instanceof StageEnd.Rises rises) {
      return rises.probe();
    }
    return end instanceof StageEnd.Falls falls ? falls.probe() : Probe.CORE;
  }

  /**
   * dξ/dp of a probe: one of the cook's goes where the cooks near the point have it, another stays
   * at its depth.
   */
  double place(Probe probe, boolean listed) {
    return listed ? place(named(above, probe), named(below, probe)) : place(probe, probe);
  }

  private static Probe named(Cook cook, Probe probe) {
    for (Probe candidate : cook.probes()) {
      if (candidate.name().equals(probe.name())) {
        return candidate;
      }
    }
    throw new IllegalArgumentException(
        "cooks near the point must have its probe \"" + probe.name() + "\"");
  }

  private double place(Probe a, Probe b) {
    return (CookIntegration.place(above, a, twoSided) - CookIntegration.place(below, b, twoSided))
        * perWidth;
  }
}
