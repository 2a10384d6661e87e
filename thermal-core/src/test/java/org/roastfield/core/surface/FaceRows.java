package org.roastfield.core.surface;

import java.util.Arrays;
import java.util.List;

/**
 * Laws evaluated side by side through their rows, in memory that held other numbers before.
 *
 * @param laws one of each face, all with the same rows
 */
record FaceRows(List<SurfaceLaw> laws) {

  /**
   * What rows say of one face; equal if every bit is.
   *
   * @param heatFlux [W/m²]
   * @param slope [W/(m²·K)]
   * @param evaporation [kg/(m²·s)]
   * @param evaporationSlope [kg/(m²·s·K)]
   */
  record Face(double heatFlux, double slope, double evaporation, double evaporationSlope) {}

  FaceRows {
    laws = List.copyOf(laws);
  }

  /** A law evaluated by its rows alone. */
  static Face alone(SurfaceLaw law, double temperature) {
    return new FaceRows(List.of(law)).at(temperature)[0];
  }

  /** The law evaluated by itself. */
  static Face scalar(SurfaceLaw law, double temperature) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(temperature, 0, flux);
    return new Face(flux.heatFlux(), flux.slope(), flux.evaporation(), flux.evaporationSlope());
  }

  /** Values at a temperature of each face [K]. */
  Face[] at(double... temperatures) {
    int faces = laws.size();
    LawRows rows = rows();
    double[][] numbers = used(rows.numbers(), faces);
    for (int i = 0; i < faces; i++) {
      rows.write(laws.get(i), numbers, i);
    }
    double[][] out = used(4, faces);
    double[][] scratch = used(rows.scratchRows(), faces);
    rows.atTime(faces, new double[faces], numbers, scratch);
    rows.evaluate(faces, temperatures.clone(), numbers, scratch, out[0], out[1], out[2], out[3]);
    Face[] result = new Face[faces];
    for (int i = 0; i < faces; i++) {
      result[i] = new Face(out[0][i], out[1][i], out[2][i], out[3][i]);
    }
    return result;
  }

  private LawRows rows() {
    LawRows rows = laws.get(0).rows();
    for (SurfaceLaw law : laws) {
      if (rows == null || law.rows() != rows) {
        throw new IllegalArgumentException("laws must share their rows, but " + law + " does not");
      }
    }
    if (rows == null) {
      throw new IllegalArgumentException("laws must not be empty");
    }
    return rows;
  }

  private static double[][] used(int count, int faces) {
    double[][] rows = new double[count][faces];
    for (double[] row : rows) {
      Arrays.fill(row, Double.NaN);
    }
    return rows;
  }
}
