package org.roastfield.core.reference;

import java.util.List;
import java.util.Optional;

/**
 * One reference case of the model problem RS-1: a roast, a sear of eight legs and a rest, with
 * results that two independent methods agree on to 1.3e-7 K.
 *
 * <p>{@code reference/rs1/spec.md} states the equations and the surface law. Temperatures are in
 * Celsius as in the files, times in seconds from the start of the roast unless a name says
 * otherwise.
 *
 * @param name C1, S1 or P1
 * @param body shape and size
 * @param material constant properties of the cut and its surface
 * @param startCelsius uniform temperature at the start
 * @param stages roast, sear, rest
 * @param eventSeconds when the centre reaches the end temperature of the roast
 * @param stageEnds state at the end of each stage
 * @param restPeak highest centre temperature in the rest
 * @param minutes state at every full minute from the start
 * @param searAndRest state on a finer grid of times within the sear and the rest
 * @param energies heat balance of each stage, per surface
 */
public record Rs1Reference(
    String name,
    Body body,
    Material material,
    double startCelsius,
    List<Stage> stages,
    double eventSeconds,
    List<StageEndState> stageEnds,
    RestPeak restPeak,
    List<MinuteState> minutes,
    List<StageState> searAndRest,
    List<StageEnergy> energies) {

  public Rs1Reference {
    stages = List.copyOf(stages);
    stageEnds = List.copyOf(stageEnds);
    minutes = List.copyOf(minutes);
    searAndRest = List.copyOf(searAndRest);
    energies = List.copyOf(energies);
  }

  /** Names of the cases that are published. */
  public static List<String> names() {
    return List.of("C1", "S1", "P1");
  }

  /** Reads a case by its name, C1 (cylinder), S1 (slab) or P1 (sphere), from the class path. */
  public static Rs1Reference load(String name) {
    return Rs1Reader.read(name, ReferenceFiles.json("/reference/rs1/" + name + ".json"));
  }

  /** Stage by its name in the file: roast, sear or rest. */
  public Stage stage(String stageName) {
    return stages.stream()
        .filter(stage -> stage.name().equals(stageName))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no stage is named " + stageName));
  }

  /**
   * Shape and size.
   *
   * @param shape slab, cylinder or sphere
   * @param exponent geometry exponent m
   * @param radiusMetres half thickness or radius
   */
  public record Body(String shape, int exponent, double radiusMetres) {}

  /**
   * Constant properties.
   *
   * @param conductivity [W/(m·K)]
   * @param density [kg/m³]
   * @param specificHeatCapacity [J/(kg·K)]
   * @param emissivity of the surface
   * @param waterActivity of the surface
   */
  public record Material(
      double conductivity,
      double density,
      double specificHeatCapacity,
      double emissivity,
      double waterActivity) {}

  /**
   * Part of the cook. A stage without legs in the file has one leg of unstated length here.
   *
   * @param name roast, sear or rest
   * @param end when the stage ends
   * @param legs spans of constant surface conditions, in order
   */
  public record Stage(String name, StageEnd end, List<Leg> legs) {
    public Stage {
      legs = List.copyOf(legs);
    }
  }

  /** End rule of a stage. */
  public sealed interface StageEnd permits CentreReaches, AfterDuration {}

  /**
   * Ends when the centre reaches a temperature.
   *
   * @param centreCelsius temperature to reach
   * @param latestSeconds bound on the stage, beyond any answer
   */
  public record CentreReaches(double centreCelsius, double latestSeconds) implements StageEnd {}

  /**
   * Ends after a time; for a stage of legs, the sum of theirs.
   *
   * @param seconds length of the stage
   */
  public record AfterDuration(double seconds) implements StageEnd {}

  /**
   * Span of constant surface conditions.
   *
   * @param seconds length; positive infinity where the stage's end rule alone decides
   * @param heatTransferCoefficient convective h [W/(m²·K)]
   * @param wetness w, factor on the vapour transfer
   * @param vapourPressurePascals p_v of the air
   * @param air temperature of the air
   * @param wall temperature that the surface radiates to
   */
  public record Leg(
      double seconds,
      double heatTransferCoefficient,
      double wetness,
      double vapourPressurePascals,
      Surroundings air,
      Surroundings wall) {}

  /**
   * Temperature over time: mean + amplitude sin(2 π t / period), t from the start of the roast.
   *
   * @param meanCelsius mean
   * @param amplitudeKelvin 0 for a constant temperature
   * @param periodSeconds positive; without meaning where the amplitude is 0
   */
  public record Surroundings(double meanCelsius, double amplitudeKelvin, double periodSeconds) {
    public Surroundings {
      Require.positive("periodSeconds", periodSeconds);
    }

    public double celsiusAt(double seconds) {
      return meanCelsius + amplitudeKelvin * StrictMath.sin(2 * Math.PI * seconds / periodSeconds);
    }
  }

  /**
   * State at a full minute.
   *
   * @param seconds time from the start of the roast
   * @param stage name of the stage
   * @param centreCelsius r = 0
   * @param middleCelsius r = R / 2
   * @param surfaceCelsius r = R
   */
  public record MinuteState(
      double seconds,
      String stage,
      double centreCelsius,
      double middleCelsius,
      double surfaceCelsius) {}

  /**
   * State at a time within a stage.
   *
   * @param stage name of the stage
   * @param secondsInStage time from the start of the stage
   * @param centreCelsius r = 0
   * @param middleCelsius r = R / 2
   * @param surfaceCelsius r = R
   */
  public record StageState(
      String stage,
      double secondsInStage,
      double centreCelsius,
      double middleCelsius,
      double surfaceCelsius) {}

  /**
   * State at the end of a stage.
   *
   * @param stage name of the stage
   * @param seconds time from the start of the roast
   * @param centreCelsius r = 0
   * @param middleCelsius r = R / 2
   * @param surfaceCelsius r = R
   */
  public record StageEndState(
      String stage,
      double seconds,
      double centreCelsius,
      double middleCelsius,
      double surfaceCelsius) {}

  /**
   * A highest centre temperature and its time.
   *
   * @param centreCelsius temperature
   * @param seconds time from the start of the roast
   * @param secondsInRest time from the start of the rest
   */
  public record Peak(double centreCelsius, double seconds, double secondsInRest) {}

  /**
   * Highest centre temperature in the rest.
   *
   * @param withinRest highest value up to the end of the rest
   * @param interior whether it is a true peak; otherwise the centre still rises at the end of the
   *     rest
   * @param ifRestGoesOn the true peak under the same conditions, where it is not interior
   */
  public record RestPeak(Peak withinRest, boolean interior, Optional<Peak> ifRestGoesOn) {}

  /**
   * Heat balance of a stage, all in MJ per m² of surface and positive into the cut.
   *
   * @param stage name of the stage
   * @param conductionIn heat conducted in from the surface
   * @param convectionIn convection
   * @param radiationIn radiation
   * @param latentIn latent heat of water, negative while it evaporates
   * @param enthalpyChange change of the heat content
   * @param waterLostKilogramsPerSquareMetre water evaporated
   */
  public record StageEnergy(
      String stage,
      double conductionIn,
      double convectionIn,
      double radiationIn,
      double latentIn,
      double enthalpyChange,
      double waterLostKilogramsPerSquareMetre) {}
}
