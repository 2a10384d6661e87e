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

  private Rs1Rows() {}

  @Override
  public int numbers() {
    return 6;
  }

  @Override
  public int scratchRows() {
    return 4;
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
  public void evaluate(
      int faces,
      double[] surfaceTemperature,
      double[] time,
      double[][] numbers,
      double[][] scratch,
      double[] heatFlux,
      double[] slope,
      double[] evaporation,
      double[] evaporationSlope) {
    double[] air = scratch[0];
    double[] saturation = scratch[1];
    double[] inverse = scratch[2];
    wave(faces, time, numbers[FREQUENCY], scratch[3]);
    air(faces, scratch[3], numbers[MEAN], numbers[AMPLITUDE], air);
    magnusExponent(faces, surfaceTemperature, inverse, saturation);
    exponential(faces, saturation);
    evaporation(faces, saturation, numbers[VAPOUR_TRANSFER], numbers[VAPOUR_PRESSURE], evaporation);
    heat(faces, surfaceTemperature, air, numbers[TRANSFER_COEFFICIENT], evaporation, heatFlux);
    evaporationSlope(faces, saturation, inverse, numbers[VAPOUR_TRANSFER], evaporationSlope);
    slope(faces, surfaceTemperature, numbers[TRANSFER_COEFFICIENT], evaporationSlope, slope);
  }

  /** Phase of the wave in turns, in [−½, ½]. */
  private static void wave(int faces, double[] time, double[] frequency, double[] turns) {
    for (int l = 0; l < faces; l++) {
      double x = time[l] * frequency[l];
      turns[l] = x - Math.rint(x);
    }
  }

  /**
   * mean + amplitude · sin 2πx by Taylor's polynomial of sin πy·2 folded to a quarter; error below
   * 1e-9 of the amplitude.
   */
  private static void air(
      int faces, double[] turns, double[] mean, double[] amplitude, double[] air) {
    for (int l = 0; l < faces; l++) {
      double x = turns[l];
      double folded = Math.max(-0.5 - x, Math.min(x, 0.5 - x));
      double y = 2 * Math.PI * folded;
      double s = y * y;
      double p = 1 - s * (1.0 / 156);
      p = 1 - s * (1.0 / 110) * p;
      p = 1 - s * (1.0 / 72) * p;
      p = 1 - s * (1.0 / 42) * p;
      p = 1 - s * (1.0 / 20) * p;
      p = 1 - s * (1.0 / 6) * p;
      air[l] = mean[l] + amplitude[l] * (y * p);
    }
  }

  private static void magnusExponent(
      int faces, double[] temperature, double[] inverse, double[] exponent) {
    for (int l = 0; l < faces; l++) {
      double t = Math.min(Math.max(temperature[l] - Rs1Law.ZERO_CELSIUS, -60), 400);
      double i = 1 / (t + 243.04);
      inverse[l] = i;
      exponent[l] = (17.625 * t * i - 4.8) / 16;
    }
  }

  /** 610.94 e^(4.8 + 16 y) in place, by Taylor's polynomial and four squarings. */
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

  private static final double SCALE = 610.94 * 121.51041751873485;

  private static void evaporation(
      int faces, double[] saturation, double[] transfer, double[] pressure, double[] rate) {
    for (int l = 0; l < faces; l++) {
      rate[l] = transfer[l] * (Rs1Law.WATER_ACTIVITY * saturation[l] - pressure[l]);
    }
  }

  private static void heat(
      int faces,
      double[] temperature,
      double[] air,
      double[] coefficient,
      double[] evaporation,
      double[] heatFlux) {
    for (int l = 0; l < faces; l++) {
      double t = temperature[l];
      double a = air[l];
      double t2 = t * t;
      double a2 = a * a;
      heatFlux[l] =
          coefficient[l] * (a - t)
              + Rs1Law.RADIATION * (a2 * a2 - t2 * t2)
              - Rs1Law.LATENT * evaporation[l];
    }
  }

  private static void evaporationSlope(
      int faces, double[] saturation, double[] inverse, double[] transfer, double[] slope) {
    for (int l = 0; l < faces; l++) {
      double i = inverse[l];
      slope[l] = Rs1Law.WATER_ACTIVITY * 17.625 * 243.04 * transfer[l] * saturation[l] * (i * i);
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
