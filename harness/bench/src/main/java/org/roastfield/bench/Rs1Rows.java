package org.roastfield.bench;

import org.roastfield.core.surface.LawRows;
import org.roastfield.core.surface.SurfaceLaw;

/** RS-1's surface law in rows, as a caller writes it. */
final class Rs1Rows implements LawRows {

  static final Rs1Rows INSTANCE = new Rs1Rows();

  private static final int TRANSFER_COEFFICIENT = 0;
  private static final int VAPOUR_TRANSFER = 1;
  private static final int VAPOUR_PRESSURE = 2;
  private static final int MEAN = 3;
  private static final int AMPLITUDE = 4;
  private static final int FREQUENCY = 5;

  private static final int DRIVE = 0;

  private static final double SCALE = 610.94 * 121.51041751873485;
  private static final double MAGNUS_SLOPE = Rs1Law.WATER_ACTIVITY * 17.625 * 243.04;

  private Rs1Rows() {}

  @Override
  public int numbers() {
    return 6;
  }

  @Override
  public int scratchRows() {
    return 3;
  }

  @Override
  public void write(SurfaceLaw law, double[][] numbers, int face) {
    Rs1Law rs1 = (Rs1Law) law;
    numbers[TRANSFER_COEFFICIENT][face] = rs1.heatTransfer();
    numbers[VAPOUR_TRANSFER][face] = rs1.wetness() * rs1.heatTransfer() * Rs1Law.TRANSFER;
    numbers[VAPOUR_PRESSURE][face] = rs1.vapourPressure();
    numbers[MEAN][face] = rs1.mean() + Rs1Law.ZERO_CELSIUS;
    numbers[AMPLITUDE][face] = rs1.amplitude();
    numbers[FREQUENCY][face] = 1 / rs1.period();
  }

  @Override
  public void atTime(int faces, double[] time, double[][] numbers, double[][] scratch) {
    double[] drive = scratch[DRIVE];
    wave(faces, time, numbers[FREQUENCY], drive);
    air(faces, numbers[MEAN], numbers[AMPLITUDE], drive);
    drive(faces, numbers[TRANSFER_COEFFICIENT], drive);
  }

  @Override
  public void evaluate(
      int faces,
      double[] surfaceTemperature,
      double[][] numbers,
      double[][] scratch,
      double[] heatFlux,
      double[] slope,
      double[] evaporation,
      double[] evaporationSlope) {
    double[] saturation = scratch[1];
    double[] inverse = scratch[2];
    double[] coefficient = numbers[TRANSFER_COEFFICIENT];
    double[] transfer = numbers[VAPOUR_TRANSFER];
    magnusExponent(faces, surfaceTemperature, inverse, saturation);
    exponential(faces, saturation);
    evaporation(faces, saturation, transfer, numbers[VAPOUR_PRESSURE], evaporation);
    heat(faces, surfaceTemperature, scratch[DRIVE], coefficient, evaporation, heatFlux);
    evaporationSlope(faces, saturation, inverse, transfer, evaporationSlope);
    slope(faces, surfaceTemperature, coefficient, evaporationSlope, slope);
  }

  /** Phase of the wave in turns, in [−½, ½]. */
  private static void wave(int faces, double[] time, double[] frequency, double[] turns) {
    for (int l = 0; l < faces; l++) {
      double x = time[l] * frequency[l];
      turns[l] = x - Math.rint(x);
    }
  }

  /**
   * mean + amplitude · sin 2πx in place, with x (1 − 4x²) P(x²) for the sine, P interpolating at
   * Chebyshev points; error below 4e-11 of the amplitude.
   */
  private static void air(int faces, double[] mean, double[] amplitude, double[] turns) {
    for (int l = 0; l < faces; l++) {
      double x = turns[l];
      double s = x * x;
      double p = -0.9046675556551789 + s * 0.1523560546312187;
      p = 3.54455356482471 + s * p;
      p = -9.628135704707535 + s * p;
      p = 16.769400945426586 + s * p;
      p = -16.208960944848467 + s * p;
      p = 6.283185307009146 + s * p;
      turns[l] = mean[l] + amplitude[l] * (x * (1 - 4 * s) * p);
    }
  }

  /** Heat flux into a face at 0 K that does not evaporate, from the air's temperature, in place. */
  private static void drive(int faces, double[] coefficient, double[] air) {
    for (int l = 0; l < faces; l++) {
      double a = air[l];
      double square = a * a;
      air[l] = coefficient[l] * a + Rs1Law.RADIATION * (square * square);
    }
  }

  private static void magnusExponent(
      int faces, double[] temperature, double[] inverse, double[] exponent) {
    for (int l = 0; l < faces; l++) {
      double t = temperature[l] - Rs1Law.ZERO_CELSIUS;
      double i = 1 / (t + 243.04);
      inverse[l] = i;
      exponent[l] = (17.625 / 16) * t * i - 4.8 / 16;
    }
  }

  /**
   * 610.94 e^(4.8 + 16 y) in place, by Taylor's polynomial and four squarings; for faces between
   * −60 and 400 °C, −1.6 < y < 0.4.
   */
  private static void exponential(int faces, double[] y) {
    for (int l = 0; l < faces; l++) {
      double x = y[l];
      double e = 1 + x * (1.0 / 9);
      e = 1 + x * (1.0 / 8) * e;
      e = 1 + x * (1.0 / 7) * e;
      e = 1 + x * (1.0 / 6) * e;
      e = 1 + x * (1.0 / 5) * e;
      e = 1 + x * (1.0 / 4) * e;
      e = 1 + x * (1.0 / 3) * e;
      e = 1 + x * 0.5 * e;
      e = 1 + x * e;
      double e2 = e * e;
      double e4 = e2 * e2;
      double e8 = e4 * e4;
      y[l] = SCALE * (e8 * e8);
    }
  }

  private static void evaporation(
      int faces, double[] saturation, double[] transfer, double[] pressure, double[] rate) {
    for (int l = 0; l < faces; l++) {
      rate[l] = transfer[l] * (Rs1Law.WATER_ACTIVITY * saturation[l] - pressure[l]);
    }
  }

  private static void heat(
      int faces,
      double[] temperature,
      double[] drive,
      double[] coefficient,
      double[] evaporation,
      double[] heatFlux) {
    for (int l = 0; l < faces; l++) {
      double t = temperature[l];
      double square = t * t;
      heatFlux[l] =
          drive[l]
              - coefficient[l] * t
              - Rs1Law.RADIATION * (square * square)
              - Rs1Law.LATENT * evaporation[l];
    }
  }

  private static void evaporationSlope(
      int faces, double[] saturation, double[] inverse, double[] transfer, double[] slope) {
    for (int l = 0; l < faces; l++) {
      double i = inverse[l];
      slope[l] = MAGNUS_SLOPE * transfer[l] * saturation[l] * (i * i);
    }
  }

  private static void slope(
      int faces,
      double[] temperature,
      double[] coefficient,
      double[] evaporationSlope,
      double[] slope) {
    for (int l = 0; l < faces; l++) {
      double t = temperature[l];
      slope[l] =
          -coefficient[l]
              - 4 * Rs1Law.RADIATION * (t * t * t)
              - Rs1Law.LATENT * evaporationSlope[l];
    }
  }
}
