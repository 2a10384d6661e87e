package org.roastfield.lab.command;

import org.roastfield.core.simulation.Settings;
import picocli.CommandLine.Option;

/** Options that say how accurately to compute. */
final class AccuracyOptions {

  @Option(
      names = "--accuracy",
      paramLabel = "KELVIN",
      defaultValue = "0.01",
      description = "Accuracy of temperatures in time (default: ${DEFAULT-VALUE} K).")
  private double accuracy;

  @Option(
      names = "--cells",
      paramLabel = "N",
      defaultValue = "40",
      description = "Number of cells between middle and surface (default: ${DEFAULT-VALUE}).")
  private int cells;

  AccuracyOptions() {}

  Settings settings() {
    try {
      return Settings.withDefaults().withAccuracy(accuracy).withCells(cells);
    } catch (IllegalArgumentException e) {
      throw new BadInputException("option --" + e.getMessage());
    }
  }
}
