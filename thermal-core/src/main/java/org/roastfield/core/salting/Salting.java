package org.roastfield.core.salting;

import java.util.OptionalDouble;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.internal.Check;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * A finite dose of salt on the faces of a cut, all round, that goes in at an even rate and then
 * spreads, eq. (71). Salt neither leaves nor comes later. Immutable.
 *
 * <p>One kelvin of the solver stands for 1 kg of salt per m³ of meat, above 300 K.
 */
public final class Salting {

  /**
   * Diffusivity of salt in cold pork and beef [m²/s]: middle of 1-4e-10 at 2-5 °C, from memory, so
   * assumed. Frozen and thawed meat is about 30 % faster.
   */
  public static final double COLD_MEAT = 2.2e-10;

  private static final double ZERO = 300;

  /** Fall of water activity for each kg of salt per kg of water; from memory. */
  private static final double ACTIVITY_SLOPE = 0.6;

  /** Finest look for the time of an evenness, as a share of the time computed. */
  private static final int LOOKS = 4000;

  private final SimulationResult result;
  private final double mean;

  private Salting(SimulationResult result, double mean) {
    this.result = result;
    this.mean = mean;
  }

  /**
   * Computes a dose.
   *
   * @param shape of the cut, salted on all faces
   * @param dose salt for each area of face [kg/m²], greater than 0
   * @param diffusivity [m²/s], greater than 0
   * @param goesIn how long the dose takes to go in [s], greater than 0
   * @param duration of the whole [s], greater than {@code goesIn}; a stage has ten days at most
   * @throws IllegalStateException if it cannot be computed
   */
  public static Salting of(
      Shape shape, double dose, double diffusivity, double goesIn, double duration) {
    Check.positive("dose", dose);
    Check.positive("diffusivity", diffusivity);
    Check.positive("goesIn", goesIn);
    Check.positive("duration after the dose went in", duration - goesIn);
    Material meat = Material.constant("salt in meat", diffusivity, 1, 1);
    Cook cook =
        Cook.of(
            new Cut(shape, meat, ZERO),
            Stage.allRound("goes in", new EvenFlow(dose / goesIn), StageEnd.after(goesIn)),
            Stage.allRound("spreads", new EvenFlow(0), StageEnd.after(duration - goesIn)));
    double mean = dose / shape.volumePerArea();
    Settings settings =
        Settings.withDefaults().withAccuracy(Math.min(1, 1e-4 * mean)).withCells(160);
    return new Salting(Simulator.with(settings).run(cook).orElseThrow(), mean);
  }

  /** Settings it was computed with. */
  public Settings settings() {
    return result.settings();
  }

  /** Mean content once all is in [kg/m³]. */
  public double mean() {
    return mean;
  }

  /**
   * Content at a place [kg/m³].
   *
   * @param position distance from the middle [m]
   * @param time since the salt was put on [s]
   */
  public double at(double position, double time) {
    return result.profile(time).at(position) - ZERO;
  }

  /** Content of the middle over that of the surface at a time [s]; 1 is even. */
  public double evenness(double time) {
    return evenness(time, half());
  }

  /**
   * Content at a depth over that of the surface at a time [s].
   *
   * @param depth below the surface [m], at most to the middle
   */
  public double evenness(double time, double depth) {
    double surface = at(half(), time);
    return surface > 0 ? at(half() - depth, time) / surface : 0;
  }

  /**
   * Hours before the fire at which to put the salt on, so that the middle has a share of what the
   * surface has; empty if the time computed is too short.
   *
   * @param evenness in (0, 1)
   */
  public OptionalDouble hoursBefore(double evenness) {
    return hoursBefore(evenness, half());
  }

  /**
   * The same for a place at a depth: the middle of a thick cut takes weeks.
   *
   * @param evenness content there over that of the surface, in (0, 1)
   * @param depth below the surface [m], greater than 0, at most to the middle
   */
  public OptionalDouble hoursBefore(double evenness, double depth) {
    Check.positive("evenness", evenness);
    Check.positive("1 - evenness", 1 - evenness);
    Check.positive("depth", depth);
    double inside = Check.inRoundedRange("depth", depth, 0, half());
    double end = result.endTime();
    for (int i = 1; i <= LOOKS; i++) {
      if (evenness(end * i / LOOKS, inside) >= evenness) {
        return OptionalDouble.of(end * i / LOOKS / 3600);
      }
    }
    return OptionalDouble.empty();
  }

  private double half() {
    return result.cook().cut().shape().halfThickness();
  }

  /** Salt in the cut less what went in, as a share of it; round-off. */
  public double residual() {
    return result.energy().relativeResidual();
  }

  /**
   * Water activity of meat with salt, from that of the raw meat.
   *
   * @param raw water activity without salt, in [0, 1]
   * @param content of salt [kg/m³], at least 0
   * @param water of the meat [kg/m³], greater than 0
   */
  public static double waterActivity(double raw, double content, double water) {
    Check.inRange("raw", raw, 0, 1);
    Check.notNegative("content", content);
    Check.positive("water", water);
    return raw * (1 - ACTIVITY_SLOPE * content / water);
  }

  /** The same flow whatever the face holds. */
  private record EvenFlow(double flow) implements SurfaceLaw {

    @Override
    public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
      flux.addHeat(flow, 0);
    }

    @Override
    public double shortestPeriod() {
      return Double.POSITIVE_INFINITY;
    }
  }
}
