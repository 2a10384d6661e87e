package org.roastfield.bench;

import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * RS-1's law evaluated by its rows for a single face: products and one division, hence the same
 * bits on every machine and in both drivers, which {@link Math#exp} does not promise.
 */
record OneFace(Rs1Law law) implements SurfaceLaw {

  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    Rs1Rows rows = Rs1Rows.INSTANCE;
    double[][] numbers = new double[rows.numbers()][1];
    double[][] scratch = new double[rows.scratchRows()][1];
    double[][] out = new double[4][1];
    rows.write(law, numbers, 0);
    rows.atTime(1, new double[] {time}, numbers, scratch);
    rows.evaluate(
        1, new double[] {surfaceTemperature}, numbers, scratch, out[0], out[1], out[2], out[3]);
    flux.addHeat(out[0][0], out[1][0]);
    flux.addEvaporation(out[2][0], out[3][0]);
  }

  @Override
  public double shortestPeriod() {
    return law.shortestPeriod();
  }
}
