package org.roastfield.lab.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.simulation.Peak;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.StageSetup;

/**
 * The milestones of a cook: when it starts, when its stages end, and when the core is warmest after
 * the heat is taken away.
 */
public final class Timeline {

  /** Rise [K] below which the core counts as standing still. */
  private static final double STANDSTILL = 0.01;

  private final CookFile file;
  private final SimulationResult result;
  private final TemperatureScale scale;
  private final List<Milestone> milestones = new ArrayList<>();

  private Timeline(CookFile file, SimulationResult result, TemperatureScale scale) {
    this.file = file;
    this.result = result;
    this.scale = scale;
  }

  /**
   * Milestones in order of time.
   *
   * @param file the cook
   * @param result its computation, complete or up to a failure
   * @param scale in which notes state temperatures
   */
  public static List<Milestone> of(CookFile file, SimulationResult result, TemperatureScale scale) {
    return new Timeline(file, result, scale).milestones();
  }

  private List<Milestone> milestones() {
    add("cut goes on", 0, "");
    for (int i = 0; i < file.stages().size(); i++) {
      StageSetup stage = file.stages().get(i);
      if (stage.lastStage() < result.stages().size()) {
        addStage(stage, i == file.stages().size() - 1 ? previousName(i) : Optional.empty());
      }
    }
    return List.copyOf(milestones);
  }

  private Optional<String> previousName(int i) {
    return i == 0 ? Optional.empty() : Optional.of(file.stages().get(i - 1).name());
  }

  /** The last stage of several is where the heat has been taken away. */
  private void addStage(StageSetup stage, Optional<String> heatBefore) {
    StageResult first = result.stages().get(stage.firstStage());
    StageResult last = result.stages().get(stage.lastStage());
    String note = stage.end();
    if (heatBefore.isPresent()) {
      double before = result.core().at(first.start());
      Optional<Peak> peak = interiorPeak(stage);
      peak.ifPresent(
          p ->
              add(
                  "core is warmest",
                  p.time(),
                  carryover(p.temperature() - before, heatBefore.get())));
      if (peak.isEmpty()) {
        note += last.coreAtEnd() - before > STANDSTILL ? rising(last, before) : "";
      }
    }
    add(stage.name() + " ends", last.end(), note);
  }

  private Optional<Peak> interiorPeak(StageSetup stage) {
    Optional<Peak> highest = Optional.empty();
    for (int i = stage.firstStage(); i <= stage.lastStage(); i++) {
      Peak peak = result.corePeak(result.stages().get(i));
      if (peak.interior() && highest.map(h -> peak.temperature() > h.temperature()).orElse(true)) {
        highest = Optional.of(peak);
      }
    }
    return highest;
  }

  private String carryover(double rise, String before) {
    return "carryover " + scale.differenceText(rise) + " since " + before + " ended";
  }

  private String rising(StageResult last, double before) {
    return "; core still rising at the end, so far by "
        + scale.differenceText(last.coreAtEnd() - before);
  }

  private void add(String name, double time, String note) {
    milestones.add(
        new Milestone(
            name,
            time,
            file.clockAt(time),
            result.core().at(time),
            result.upperSurface().at(time),
            note));
  }
}
