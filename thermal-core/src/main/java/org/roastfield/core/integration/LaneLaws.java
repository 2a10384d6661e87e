package org.roastfield.core.integration;

import org.jspecify.annotations.Nullable;
import org.roastfield.core.surface.LawRows;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * The surface laws of all lanes. A law with rows is always evaluated by them, in the company of the
 * lanes that share them or alone, so that company never changes a bit; one without is evaluated by
 * itself.
 */
final class LaneLaws {

  private final int width;
  private final SurfaceLaw[] laws;
  private final double[] highest;
  private final @Nullable LawRows[] rowsOf;
  private final SurfaceFlux flux = new SurfaceFlux();
  private final double[] oneFace = new double[1];
  private final double[] oneTime = new double[1];
  private final double[] oneFlux = new double[1];
  private final double[] oneSlope = new double[1];
  private final double[] oneEvaporation = new double[1];
  private final double[] oneEvaporationSlope = new double[1];
  private @Nullable LawRows main;
  private double[][] numbers = new double[0][];
  private double[][] scratch = new double[0][];
  private double[][] oneNumbers = new double[0][];
  private double[][] oneScratch = new double[0][];
  private double[] time = new double[0];
  private int others;

  LaneLaws(int width) {
    this.width = width;
    this.laws = new SurfaceLaw[width];
    this.highest = new double[width];
    this.rowsOf = new LawRows[width];
    java.util.Arrays.fill(laws, SurfaceLaw.insulated());
  }

  SurfaceLaw law(int lane) {
    return laws[lane];
  }

  /** Whether the law of a lane is known not to change in time. */
  boolean isSteady(int lane) {
    LawRows rows = rowsOf[lane];
    return rows != null && rows.isSteady();
  }

  /** Highest temperature at which the law of a lane has a value [K]. */
  double highest(int lane) {
    return highest[lane];
  }

  void set(int lane, SurfaceLaw law) {
    LawRows rows = law.rows();
    if (main == null && rows != null) {
      main = rows;
      numbers = new double[rows.numbers()][width];
      scratch = new double[rows.scratchRows()][width];
    }
    laws[lane] = law;
    highest[lane] = law.highestTemperature();
    rowsOf[lane] = rows;
    if (rows != null && rows == main) {
      rows.write(law, numbers, lane);
    }
  }

  void move(int from, int to) {
    set(to, laws[from]);
  }

  void countOthers(int lanes) {
    others = 0;
    for (int l = 0; l < lanes; l++) {
      if (rowsOf[l] == null || rowsOf[l] != main) {
        others++;
      }
    }
  }

  /** Sets the times of what follows. */
  void atTime(int lanes, double[] time) {
    this.time = time;
    if (main != null && others < lanes) {
      main.atTime(lanes, time, numbers, scratch);
    }
  }

  void evaluate(
      int lanes,
      double[] face,
      double[] heatFlux,
      double[] slope,
      double[] evaporation,
      double[] evaporationSlope) {
    if (main != null && others < lanes) {
      main.evaluate(lanes, face, numbers, scratch, heatFlux, slope, evaporation, evaporationSlope);
    }
    if (others > 0) {
      for (int l = 0; l < lanes; l++) {
        LawRows rows = rowsOf[l];
        if (rows == null || rows != main) {
          evaluateOne(rows, l, face[l], time[l]);
          heatFlux[l] = oneFlux[0];
          slope[l] = oneSlope[0];
          evaporation[l] = oneEvaporation[0];
          evaporationSlope[l] = oneEvaporationSlope[0];
        }
      }
    }
  }

  private void evaluateOne(@Nullable LawRows rows, int lane, double face, double time) {
    if (rows == null) {
      flux.clear();
      laws[lane].evaluate(face, time, flux);
      oneFlux[0] = flux.heatFlux();
      oneSlope[0] = flux.slope();
      oneEvaporation[0] = flux.evaporation();
      oneEvaporationSlope[0] = flux.evaporationSlope();
      return;
    }
    if (oneNumbers.length < rows.numbers() || oneScratch.length < rows.scratchRows()) {
      oneNumbers = new double[rows.numbers()][1];
      oneScratch = new double[rows.scratchRows()][1];
    }
    oneFace[0] = face;
    oneTime[0] = time;
    rows.write(laws[lane], oneNumbers, 0);
    rows.atTime(1, oneTime, oneNumbers, oneScratch);
    rows.evaluate(
        1, oneFace, oneNumbers, oneScratch, oneFlux, oneSlope, oneEvaporation, oneEvaporationSlope);
  }
}
