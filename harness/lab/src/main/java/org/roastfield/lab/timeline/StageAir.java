package org.roastfield.lab.timeline;

import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.surface.Signal;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.StageSetup;

/**
 * Air around a cut over a whole cook, as the cook file states it for each stage; openings of the
 * lid are left out.
 *
 * @param file the cook
 * @param result its computation, with the times at which stages ended
 */
public record StageAir(CookFile file, SimulationResult result) implements Signal {

  @Override
  public double at(double time) {
    int stage = 0;
    while (stage < result.stages().size() - 1 && time > result.stages().get(stage).end()) {
      stage++;
    }
    int now = stage;
    return file.stages().stream()
        .filter(setup -> setup.lastStage() >= now)
        .mapToDouble(setup -> setup.upper().air())
        .findFirst()
        .orElseGet(() -> last().upper().air());
  }

  private StageSetup last() {
    return file.stages().get(file.stages().size() - 1);
  }
}
