package org.roastfield.core.simulation;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.integration.TangentIntegration;

/** Derivatives of a {@link StageResult}, one number a parameter. */
final class StageSensitivity {

  final double[] end;
  final double[] core;
  final double[] upper;
  final double[] lower;

  private StageSensitivity(int parameters) {
    end = new double[parameters];
    core = new double[parameters];
    upper = new double[parameters];
    lower = new double[parameters];
  }

  /** Collects those of a cook as its stages end. */
  static final class Collector {

    private final TangentIntegration tangents;
    private final Reading core;
    private final Reading upper;
    private final Reading lower;
    private final List<StageSensitivity> stages = new ArrayList<>();

    Collector(CookIntegration integration, TangentIntegration tangents, double halfThickness) {
      this.tangents = tangents;
      core = integration.reading(Probe.CORE);
      upper = integration.reading(Probe.SURFACE);
      lower = integration.readingAt(-halfThickness);
    }

    /** A stage has just ended. */
    void ended() {
      StageSensitivity stage = new StageSensitivity(tangents.parameters());
      for (int p = 0; p < tangents.parameters(); p++) {
        stage.end[p] = tangents.time(p);
        stage.core[p] = tangents.now(p, core);
        stage.upper[p] = tangents.now(p, upper);
        stage.lower[p] = tangents.now(p, lower);
      }
      stages.add(stage);
    }

    List<StageSensitivity> stages() {
      return stages;
    }
  }
}
