package org.roastfield.core.simulation;

import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.internal.Check;

/**
 * How accurately and how finely a cook is computed.
 *
 * @param accuracy wished accuracy of temperatures in time [K], 1e-9 … 1; bounds the error that each
 *     step adds to the volume-weighted mean square temperature. 0.01 leaves about as much at the
 *     core of a whole cook (docs/numerics.md)
 * @param cells number of finite volumes from a heated face to the middle, 6 … 50 000; a slab whose
 *     faces are treated differently has twice as many
 * @param surfaceCell wished width of the cells at the heated faces [m]; used where it is finer than
 *     an even grid
 * @param mostSteps steps after which a cook counts as failed
 */
public record Settings(double accuracy, int cells, double surfaceCell, int mostSteps) {

  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public Settings {
    Check.inRange("accuracy", accuracy, 1e-9, 1);
    Check.inRange("cells", cells, 6, 50_000);
    Check.positive("surfaceCell", surfaceCell);
    Check.inRange("mostSteps", mostSteps, 1, Integer.MAX_VALUE);
  }

  /** 0.01 K, 40 cells, 0.2 mm at the face, at most 200 000 steps. */
  public static Settings withDefaults() {
    return new Settings(0.01, 40, 0.2e-3, 200_000);
  }

  /** The same with another accuracy [K]. */
  public Settings withAccuracy(double accuracy) {
    return new Settings(accuracy, cells, surfaceCell, mostSteps);
  }

  /** The same with another number of cells. */
  public Settings withCells(int cells) {
    return new Settings(accuracy, cells, surfaceCell, mostSteps);
  }

  /** The same with another width of the cells at the faces [m]. */
  public Settings withSurfaceCell(double surfaceCell) {
    return new Settings(accuracy, cells, surfaceCell, mostSteps);
  }

  /** The same with another bound on the steps. */
  public Settings withMostSteps(int mostSteps) {
    return new Settings(accuracy, cells, surfaceCell, mostSteps);
  }

  /** The same for the integration. */
  CookIntegration.Accuracy integrationAccuracy() {
    return new CookIntegration.Accuracy(accuracy, cells, surfaceCell, mostSteps);
  }
}
