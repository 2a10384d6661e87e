package org.roastfield.lab.diagnosis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.inference.Calibration;
import org.roastfield.core.inference.CookModel;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.cooker.CookerLogs;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.cooker.LoggedCase;

/** Logs calibrated and looked into. */
record Asked(MapEstimate estimate, Verdict verdict, List<Finding> findings) {

  static Asked about(SpoiledLogs.Written... logs) {
    List<LoggedCase> cases = new ArrayList<>();
    List<Source> sources = new ArrayList<>();
    for (SpoiledLogs.Written each : logs) {
      cases.add(LoggedCase.of(each.file(), each.log(), LogSpan.ALL, Optional.empty()));
      sources.add(new Source(each.log(), LogSpan.ALL, Optional.empty()));
    }
    Simulator simulator = Simulator.withDefaults();
    CookerLogs together = CookerLogs.of(cases, parameter -> true);
    CookModel model = together.model(simulator);
    Calibration calibration =
        Calibration.of(Prior.of(together.parameters()), model.evidence(), model);
    MapEstimate estimate = calibration.map();
    assertTrue(estimate.isFound(), () -> "ended with " + estimate.status());
    Verdict verdict = Inquiry.of(together, sources, simulator).into(calibration, estimate);
    return new Asked(estimate, verdict, Findings.of(verdict, verdict.pooled(), sources, simulator));
  }

  /** Sentences about the likely causes, the most probable first. */
  List<String> causes() {
    return findings.stream()
        .filter(finding -> finding.kind() == Finding.Kind.CAUSE)
        .map(Finding::words)
        .toList();
  }

  List<String> words(Finding.Kind kind) {
    return findings.stream().filter(finding -> finding.kind() == kind).map(Finding::words).toList();
  }

  /** Distance of the pooled belief about convection from the truth, in its spreads. */
  double convectionOff(SpoiledLogs.Written log) {
    Prior pooled = verdict.pooled();
    int p = pooled.parameters().index("convection");
    double truth = Math.log(log.made().recipe().cooker().convection());
    return (pooled.mean()[p] - truth) / pooled.spread(p);
  }
}
