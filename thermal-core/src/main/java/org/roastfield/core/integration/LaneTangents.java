package org.roastfield.core.integration;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Derivatives of members by parameters, carried along by lanes: those of the discrete scheme on
 * each lane's own steps, as {@link TangentIntegration} has them of a single cook. A member's
 * derivatives depend on its own cook, its neighbours in parameters and the settings alone.
 */
final class LaneTangents {

  private final Grid grid;
  private final LaneStepper stepper;
  private final LaneLaws laws;
  private final TangentRecord record;
  private final Reading core;
  private final double[] faceRates;
  private final TangentRows[] rows;
  private final LaneChanges[] changes;
  private final TangentSweep sweep;
  private final LawSlopes slopes;
  private final LengthTangent byLength;
  private final FaceSlopes oneFace;
  private final List<List<CookVariation>> variations = new ArrayList<>();
  private final boolean[] believed;
  private final double[] lastPeak;
  private final double[][] peakChange;
  private final double[] stageTime;
  private final double[] heatFlux;

  LaneTangents(
      Grid grid,
      LaneStepper stepper,
      LaneLaws laws,
      int width,
      Reading core,
      TangentRecord record) {
    int parameters = record.parameters;
    this.grid = grid;
    this.stepper = stepper;
    this.laws = laws;
    this.record = record;
    this.core = core;
    faceRates = ConductionMatrix.faceRates(grid);
    rows = new TangentRows[parameters];
    changes = new LaneChanges[parameters];
    for (int p = 0; p < parameters; p++) {
      rows[p] = new TangentRows(grid.cells(), width);
      changes[p] = new LaneChanges(width);
    }
    sweep = new TangentSweep(grid, stepper.mass, width);
    slopes = new LawSlopes(width);
    byLength = new LengthTangent(grid, stepper);
    oneFace = new FaceSlopes(1, new Counters());
    believed = new boolean[width];
    lastPeak = new double[width];
    peakChange = new double[parameters][width];
    stageTime = new double[width];
    heatFlux = new double[width];
    for (int l = 0; l < width; l++) {
      variations.add(List.of());
    }
  }

  /** A lane takes a member. */
  void begin(int lane, int member, List<CookVariation> by) {
    variations.set(lane, by);
    for (int p = 0; p < rows.length; p++) {
      CookVariation variation = by.get(p);
      rows[p].begin(
          lane, variation.start(), variation.logTimeScale(), variation.logFaceResistance());
      record.begins(member, p, stepper.time[lane], variation.start());
    }
  }

  /**
   * A lane has entered a stage: its face has been balanced anew.
   *
   * @param flowBefore inward flow before [K]
   * @param peak the core where the stage begins [K]
   */
  void restarted(int lane, int stage, SurfaceLaw law, double flowBefore, double peak) {
    double face = stepper.stageFace[0][lane];
    double time = stepper.time[lane];
    believed[lane] = oneFace.believes(law, face, time);
    if (timeMoves(lane)) {
      oneFace.byTemperatureAndTime(State.UPPER, law, believed[lane], face, time);
    } else {
      oneFace.byTemperature(State.UPPER, law, believed[lane], face, time);
    }
    lastPeak[lane] = peak;
    for (int p = 0; p < rows.length; p++) {
      CookVariation variation = variations.get(lane).get(p);
      peakChange[p][lane] = core.ofLane(rows[p].value, lane);
      changes[p].set(lane, stage, law, variation);
      oneFace.change[State.UPPER][0] = 0;
      oneFace.evaporationChange[State.UPPER][0] = 0;
      if (variation.changesLaw(stage, State.UPPER)) {
        oneFace.byParameter(State.UPPER, 0, variation, stage, time, face, time);
      }
      restart(lane, rows[p], stepper.flow[lane], flowBefore);
    }
  }

  private void restart(int lane, TangentRows t, double flow, double flowBefore) {
    int n = grid.cells();
    double kappa = stepper.kappa[lane];
    double here = t.value[n - 1][lane];
    double gain = grid.upper().face();
    double offset = grid.upper().next() * (t.value[n - 2][lane] - here);
    double driven =
        kappa * (oneFace.change[State.UPPER][0] + oneFace.trend[State.UPPER] * t.time[lane])
            + t.logResistance[lane] * flow;
    double face = (offset - driven - gain * here) / (kappa * oneFace.slope[State.UPPER] - gain);
    double newFlow = offset + gain * (face - here);
    double change =
        stepper.timeScale[lane]
            * (t.logTimeScale[lane] * (flow - flowBefore) + newFlow - t.flow[lane]);
    for (int i = 0; i < n; i++) {
      t.rate[i][lane] += change * faceRates[i];
    }
    t.face[lane] = face;
    t.flow[lane] = newFlow;
    t.evaporation[lane] =
        oneFace.evaporationSlope[State.UPPER] * face
            + oneFace.evaporationChange[State.UPPER][0]
            + oneFace.evaporationTrend[State.UPPER] * t.time[lane];
  }

  /** Differentiates the attempt that all lanes have just made, before any of it is kept. */
  void differentiate(int lanes) {
    for (int s = 1; s < Esdirk4.STAGES; s++) {
      differentiateLaws(lanes, s);
    }
    for (int p = 0; p < rows.length; p++) {
      slopes.clearChange(lanes);
      if (changes[p].begin(lanes)) {
        for (int s = 1; s < Esdirk4.STAGES; s++) {
          Rows.stageTime(lanes, Esdirk4.c(s), stepper.time, stepper.step, stageTime);
          changes[p].evaluate(
              lanes,
              stageTime,
              stepper.stageFace[s],
              slopes.change[s],
              slopes.evaporationChange[s]);
        }
      }
      sweep.step(lanes, stepper.factors, stepper.stageFlow, slopes, 0, rows[p]);
    }
  }

  private void differentiateLaws(int lanes, int s) {
    double[] face = stepper.stageFace[s];
    Rows.stageTime(lanes, Esdirk4.c(s), stepper.time, stepper.step, stageTime);
    laws.atTime(lanes, stageTime);
    laws.evaluate(
        lanes, face, heatFlux, slopes.slope[s], slopes.evaporation[s], slopes.evaporationSlope[s]);
    for (int l = 0; l < lanes; l++) {
      slopes.trend[s][l] = 0;
      slopes.evaporationTrend[s][l] = 0;
      boolean drifts = !laws.isSteady(l) && timeMoves(l);
      if (stepper.solved[l] && (drifts || !believed[l])) {
        alone(l, s, face[l], stageTime[l], drifts);
      }
    }
  }

  /** Slopes of a lane whose law changes in time, or is wrong about its own slope. */
  private void alone(int lane, int s, double face, double time, boolean drifts) {
    if (drifts) {
      oneFace.byTemperatureAndTime(State.UPPER, laws.law(lane), believed[lane], face, time);
    } else {
      oneFace.byTemperature(State.UPPER, laws.law(lane), believed[lane], face, time);
    }
    slopes.slope[s][lane] = oneFace.slope[State.UPPER];
    slopes.evaporationSlope[s][lane] = oneFace.evaporationSlope[State.UPPER];
    slopes.trend[s][lane] = oneFace.trend[State.UPPER];
    slopes.evaporationTrend[s][lane] = oneFace.evaporationTrend[State.UPPER];
  }

  private boolean timeMoves(int lane) {
    boolean moves = false;
    for (TangentRows t : rows) {
      moves |= t.time[lane] != 0;
    }
    return moves;
  }

  /** A lane's attempt does not stand. */
  void repeat(int lane) {
    for (TangentRows t : rows) {
      t.repeat(lane);
    }
  }

  /** A lane's attempt stands, before the lane's own numbers are kept. */
  void accepted(int lane) {
    for (TangentRows t : rows) {
      t.keepFace(lane, stepper.step[lane]);
    }
  }

  /**
   * A lane's accepted step ends its stage, at a time or duration, or at a threshold.
   *
   * @param reading what the threshold waits for; ignored for the others
   * @param place ξ of the reading
   */
  void ended(int lane, int stage, StageEnd rule, Reading reading, double place) {
    boolean waits = rule instanceof StageEnd.Rises || rule instanceof StageEnd.Falls;
    boolean differentiated = false;
    double perSecond = 0;
    for (int p = 0; p < rows.length; p++) {
      CookVariation variation = variations.get(lane).get(p);
      double change = waits ? now(rows[p], lane, reading) : 0;
      if (waits && variation.awaitedPlace(stage) != 0) {
        change += variation.awaitedPlace(stage) * plainNow(lane, Reading.slopeAt(grid, place));
      }
      double start = rule instanceof StageEnd.At ? rows[p].time[lane] : 0;
      double shift = variation.target(stage) - start - change;
      if (shift != 0 && !differentiated) {
        byLength.differentiate(lane, slopes, laws.law(lane), believed[lane]);
        perSecond = waits ? byLength.now(reading) : 1;
        differentiated = true;
      }
      if (shift != 0) {
        rows[p].lengthen(lane, shift / perSecond, byLength.rows());
        byLength.keepShift(p, shift / perSecond);
      } else {
        byLength.keepShift(p, 0);
      }
    }
  }

  private static double now(TangentRows t, int lane, Reading reading) {
    return reading.ofLane(t.nextValue, lane) + reading.upperWeight() * t.face[lane];
  }

  private double plainNow(int lane, Reading reading) {
    return reading.ofLane(stepper.nextValue, lane)
        + reading.upperWeight() * stepper.stageFace[Esdirk4.STAGES - 1][lane];
  }

  /**
   * Keeps the samples and the peak inside a lane's accepted step; its ends must be final.
   *
   * @param start of the step [s]
   * @param end of the step [s]
   * @param ended whether {@link #ended} was called for it
   */
  void sample(int lane, int member, double start, double end, boolean ended, RunningPeak peak) {
    double[] times = record.sampleTimes();
    for (int i = record.firstAfter(start); i < times.length && times[i] <= end; i++) {
      double theta = (times[i] - start) / (end - start);
      for (int p = 0; p < rows.length; p++) {
        record.sample(member, i, p, inside(lane, p, theta, ended));
      }
    }
    if (peak.temperature != lastPeak[lane]) {
      lastPeak[lane] = peak.temperature;
      double theta = (peak.time - start) / (end - start);
      for (int p = 0; p < rows.length; p++) {
        peakChange[p][lane] =
            theta < 1 ? inside(lane, p, theta, ended) : core.ofLane(rows[p].nextValue, lane);
      }
    } else if (ended && peak.time == end) {
      for (int p = 0; p < rows.length; p++) {
        peakChange[p][lane] = core.ofLane(rows[p].nextValue, lane);
      }
    }
  }

  /** Change of the core at a fixed time inside a step. */
  private double inside(int lane, int p, double theta, boolean ended) {
    TangentRows t = rows[p];
    double h = stepper.step[lane];
    double rate0 = stepper.watchedRate.start[lane];
    double rate1 = stepper.watchedRate.end[lane];
    double value =
        Cubic.hermite(
            theta,
            h,
            core.ofLane(t.value, lane),
            core.ofLane(t.rate, lane),
            core.ofLane(t.nextValue, lane),
            core.ofLane(t.nextRate, lane));
    double length = ended ? byLength.shift(p) : 0;
    value += length * Cubic.hermiteByLength(theta, rate0, rate1);
    double shift = t.time[lane] - length + theta * length;
    double slope =
        Cubic.hermiteSlope(
            theta, h, stepper.watched.start[lane], rate0, stepper.watched.end[lane], rate1);
    return value - shift * slope / h;
  }

  /** After {@link LaneStepper#swap()}. */
  void swap() {
    for (TangentRows t : rows) {
      t.swap();
    }
  }

  /** A lane's stage has ended; after {@link #swap()}. */
  void stageEnded(int lane, int member, int stage) {
    for (int p = 0; p < rows.length; p++) {
      TangentRows t = rows[p];
      record.peaked(member, stage, p, peakChange[p][lane]);
      record.stageEnded(member, stage, p, t.time[lane], core.ofLane(t.value, lane), t.face[lane]);
    }
  }

  /** A lane's member has come to its end, whatever it is. */
  void finished(int lane, int member, int stage, boolean completed) {
    for (int p = 0; p < rows.length; p++) {
      record.finished(member, p, rows[p].evaporated[lane]);
      if (!completed) {
        record.peaked(member, stage, p, peakChange[p][lane]);
      }
    }
  }

  /** Copies a lane into another. */
  void move(int from, int to) {
    variations.set(to, variations.get(from));
    believed[to] = believed[from];
    lastPeak[to] = lastPeak[from];
    for (int p = 0; p < rows.length; p++) {
      rows[p].move(from, to);
      changes[p].move(from, to);
      peakChange[p][to] = peakChange[p][from];
    }
  }
}
