package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.roastfield.core.chamber.HoldBox;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.Role;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.timeline.TemperatureScale;

/**
 * What becomes of the expected cook that is early: it waits for its sear, or is kept from its least
 * rest to carving, in one way or another.
 *
 * @param how in words
 * @param carved core when it is carved [K]
 * @param highest core of the whole cook [K]
 * @param surface when it is carved [K]
 */
public record Keeping(String how, double carved, double highest, double surface) {

  /** Shorter waits are not worth a choice [s]. */
  private static final double WORTH_A_CHOICE = 300;

  /** What hot food is held at or above if nothing is said [K]: 135 °F, FDA Food Code 3-501.16. */
  private static final double HELD_HOT = Temperatures.fahrenheit(135);

  /** Air of a warm cabinet [K]: 60 °C, above that; assumed. */
  private static final double CABINET = Temperatures.celsius(60);

  /** Convection in it [W/(m²·K)]; assumed. */
  private static final double CABINET_CONVECTION = 6;

  private static final double EMISSIVITY = 0.9;

  /** Of still air about a cut that lies there [W/(m²·K)]; assumed. */
  private static final double ROOM_CONVECTION = 6;

  /** What hot food is held at or above where a file is cooked [K]. */
  static double minimum(CookFile file) {
    return file.notes().plan().holdMinimum().orElse(HELD_HOT);
  }

  /**
   * The ways, first that of the file; empty if it is not kept for long, or does not get there.
   *
   * @param held how long the expected cook waits, or is kept [s]
   */
  static List<Keeping> of(
      CookFile file,
      Cook expected,
      List<Role> roles,
      Plan plan,
      double held,
      double leastRest,
      TemperatureScale scale) {
    double carve = plan.milestone(Milestone.Kind.CARVE).time().median();
    if (!(held >= WORTH_A_CHOICE) || !Double.isFinite(carve)) {
      return List.of();
    }
    List<Keeping> all = new ArrayList<>();
    ways(file, roles, scale)
        .forEach(
            (how, law) -> of(how, kept(expected, roles, law, leastRest, plan)).ifPresent(all::add));
    return List.copyOf(all);
  }

  private static Map<String, Optional<SurfaceLaw>> ways(
      CookFile file, List<Role> roles, TemperatureScale scale) {
    double room =
        file.stages().stream()
            .filter(stage -> roles.get(stage.firstStage()) == Role.REST)
            .findFirst()
            .orElseThrow()
            .upper()
            .air();
    Signal cabinet = Signal.constant(CABINET);
    Map<String, Optional<SurfaceLaw>> ways = new LinkedHashMap<>();
    ways.put("as the file has it", Optional.empty());
    ways.put(
        "in an insulated box",
        Optional.of(new HoldBox(HoldBox.LOSS_COEFFICIENT, Math.min(room, CABINET)).law()));
    ways.put(
        String.format(Locale.ROOT, "in dry air at %.0f %s", scale.value(CABINET), scale.unit()),
        Optional.of(
            SurfaceLaw.sum(
                new Convection(CABINET_CONVECTION, cabinet), new Radiation(EMISSIVITY, cabinet))));
    Signal air = Signal.constant(room);
    ways.put(
        "unwrapped with a dry face",
        Optional.of(
            SurfaceLaw.sum(new Convection(ROOM_CONVECTION, air), new Radiation(EMISSIVITY, air))));
    return ways;
  }

  /** The expected cook, waiting or kept after its least rest under another law. */
  private static Cook kept(
      Cook expected, List<Role> roles, Optional<SurfaceLaw> law, double leastRest, Plan plan) {
    if (law.isEmpty()) {
      return expected;
    }
    if (plan.waits()) {
      return waiting(expected, law.get());
    }
    int rest = expected.stages().size() - roles.size() + roles.indexOf(Role.REST);
    List<Stage> stages = new ArrayList<>(expected.stages().subList(0, rest));
    Stage own = expected.stages().get(rest);
    stages.add(CentralCook.ending(own, StageEnd.after(leastRest)));
    double carve = plan.lead() + plan.milestone(Milestone.Kind.CARVE).time().median();
    stages.add(Stage.allRound("kept", law.get(), StageEnd.at(carve)));
    return new Cook(expected.cut(), stages, expected.probes());
  }

  private static Cook waiting(Cook expected, SurfaceLaw law) {
    List<Stage> stages =
        expected.stages().stream()
            .map(
                stage ->
                    stage.name().equals(CentralCook.WAIT)
                        ? Stage.allRound(stage.name(), law, stage.end())
                        : stage)
            .toList();
    return new Cook(expected.cut(), stages, expected.probes());
  }

  private static Optional<Keeping> of(String how, Cook cook) {
    if (!(Simulator.withDefaults().run(cook) instanceof Outcome.Completed completed)) {
      return Optional.empty();
    }
    SimulationResult result = completed.result();
    StageResult last = result.stages().get(result.stages().size() - 1);
    return Optional.of(
        new Keeping(
            how, last.coreAtEnd(), CentralCook.finalCore(result), last.upperSurfaceAtEnd()));
  }

  /**
   * All of them in a line.
   *
   * @param waits whether it is before its sear that it is held
   * @param held how long the expected cook waits, or is kept [s]
   * @param minimum that hot food is held at [K]; looked at where it is kept after its rest
   */
  static PlanLine line(
      List<Keeping> all, boolean waits, double held, double minimum, TemperatureScale scale) {
    List<String> words = new ArrayList<>();
    for (Keeping one : all) {
      words.add(
          one.how
              + " the middle is carved at "
              + scale.text(one.carved)
              + " after "
              + scale.text(one.highest)
              + " at its hottest");
    }
    return new PlanLine(
        "keeping it",
        Words.duration(held)
            + (waits ? " before its sear: " : " warm: ")
            + String.join("; ", words)
            + (waits ? "" : held(all, minimum, scale)),
        "assumed");
  }

  private static String held(List<Keeping> all, double minimum, TemperatureScale scale) {
    List<String> hot = all.stream().filter(one -> one.carved >= minimum).map(Keeping::how).toList();
    return "; the middle is still at "
        + scale.text(minimum)
        + " or above "
        + (hot.isEmpty()
            ? "in none of these"
            : hot.size() == all.size() ? "in all of these" : "only " + String.join(", ", hot));
  }
}
