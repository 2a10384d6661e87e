package org.roastfield.core.integration;

import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Many cooks side by side on one grid over ξ: each lane has steps, stages and events of its own,
 * and takes the next member when its own is done, so none waits for another. A member's numbers
 * depend on its cook and the settings alone.
 *
 * <p>Lanes need constant properties and equal treatment all round; other members are computed one
 * by one, by the single cook's driver.
 */
public final class LaneIntegration {

  private final Grid grid;
  private final CookIntegration.Accuracy accuracy;
  private final LaneQueue queue;
  private final Reading core;
  private final LaneStepper stepper;
  private final LaneLaws laws;
  private final FaceBalance balance;
  private final double[] faceRates;
  private final int width;

  private final Lane[] lane;
  private final StepReading step = new StepReading();
  private final double[] oneFace = new double[2];
  private final double[] oneFlow = new double[2];
  private final double[] oneEvaporation = new double[2];
  private final @Nullable LaneTangents tangents;
  private int lanes;

  /**
   * Without derivatives.
   *
   * @param template cook whose shape and size define the grid over ξ
   * @param width number of lanes
   */
  public LaneIntegration(Cook template, CookIntegration.Accuracy accuracy, int width) {
    this(template, accuracy, width, null);
  }

  /**
   * @param template cook whose shape and size define the grid over ξ
   * @param width number of lanes
   * @param tangentRecord where derivatives are kept, or null if none are wanted
   */
  public LaneIntegration(
      Cook template,
      CookIntegration.Accuracy accuracy,
      int width,
      @Nullable TangentRecord tangentRecord) {
    this.grid = CookIntegration.grid(template, accuracy);
    this.accuracy = accuracy;
    this.queue = new LaneQueue(grid, template, accuracy, tangentRecord);
    this.width = width;
    this.core = Reading.at(grid, 0);
    this.laws = new LaneLaws(width);
    ScaledMaterial unit = new ScaledMaterial(Material.constant("unit", 1, 1, 1));
    this.balance = new FaceBalance(unit, 1, 1, accuracy.tolerance(), new Counters());
    this.stepper = new LaneStepper(grid, width, accuracy.tolerance(), core, balance, laws);
    this.faceRates = ConductionMatrix.faceRates(grid);
    this.tangents =
        tangentRecord == null
            ? null
            : new LaneTangents(grid, stepper, laws, width, core, tangentRecord);
    lane = new Lane[width];
    for (int l = 0; l < width; l++) {
      lane[l] = new Lane(template, core, accuracy.tolerance());
    }
  }

  /** Computes members until there is none left. */
  public void run(LaneMembers members, MemberRecord record) {
    lanes = 0;
    fill(members, record);
    while (lanes > 0 && !members.isCancelled()) {
      for (int l = 0; l < lanes; l++) {
        stepper.step[l] = lane[l].progress.nextStep(stepper.time[l]);
      }
      laws.countOthers(lanes);
      stepper.attempt(lanes);
      if (tangents != null) {
        tangents.differentiate(lanes);
      }
      for (int l = 0; l < lanes; l++) {
        judge(l, record);
      }
      stepper.swap();
      if (tangents != null) {
        tangents.swap();
      }
      for (int l = lanes - 1; l >= 0; l--) {
        follow(l, members, record);
      }
    }
  }

  private void fill(LaneMembers members, MemberRecord record) {
    while (lanes < width) {
      if (!begin(lanes, members, record)) {
        return;
      }
      lanes++;
    }
  }

  /** Puts the next member that has work for a lane into lane {@code l}; false if there is none. */
  private boolean begin(int l, LaneMembers members, MemberRecord record) {
    while (queue.next(members, record)) {
      if (start(l, record)) {
        return true;
      }
    }
    return false;
  }

  private boolean start(int l, MemberRecord record) {
    Cook cook = queue.cook();
    int next = queue.member();
    Shape shape = cook.cut().shape();
    ScaledMaterial material = new ScaledMaterial(cook.cut().material());
    double start = cook.cut().startTemperature();
    lane[l].length = shape.halfThickness();
    double radius = shape.equivalentRadius();
    stepper.timeScale[l] = material.diffusivity() / (radius * radius);
    stepper.kappa[l] = radius / material.conductivity();
    for (int i = 0; i < grid.cells(); i++) {
      stepper.value[i][l] = start;
      stepper.rate[i][l] = 0;
    }
    stepper.time[l] = 0;
    stepper.stageFace[0][l] = start;
    stepper.flow[l] = 0;
    double cell = grid.width(grid.upper().cell());
    lane[l].firstStep =
        StageProgress.firstStep(accuracy.tolerance()) * cell * cell / stepper.timeScale[l];
    lane[l].begin(cook, next);
    record.begins(next, 0, start);
    if (tangents != null) {
      tangents.begin(l, next, queue.variations());
    }
    return nextStage(l, record);
  }

  /** Enters the next stage that takes time; false if the member is finished. */
  private boolean nextStage(int l, MemberRecord record) {
    for (lane[l].stage++; lane[l].stage < lane[l].cook.stages().size(); lane[l].stage++) {
      Stage next = lane[l].cook.stages().get(lane[l].stage);
      lane[l].peak.begin(stepper.time[l], core.ofLane(stepper.value, l));
      laws.set(l, next.upper());
      if (!restart(l, next.upper())) {
        finish(l, MemberRecord.FACE_UNBALANCED, record);
        return false;
      }
      boolean met = await(l, next.end());
      double duration = next.end().longest(stepper.time[l]);
      if (!met && duration > 0) {
        lane[l].progress.begin(
            stepper.time[l] + duration, next.upper().shortestPeriod(), lane[l].firstStep);
        return true;
      }
      if (!met && lane[l].awaiting) {
        finish(l, MemberRecord.END_RULE_NOT_MET, record);
        return false;
      }
      stageEnded(l, record);
    }
    finish(l, MemberRecord.COMPLETED, record);
    return false;
  }

  /** Sets the threshold of a rule; returns whether it is met already. */
  private boolean await(int l, StageEnd rule) {
    lane[l].awaiting = false;
    if (rule instanceof StageEnd.Rises rises) {
      return await(l, rises.probe(), rises.temperature(), true);
    }
    if (rule instanceof StageEnd.Falls falls) {
      return await(l, falls.probe(), falls.temperature(), false);
    }
    return false;
  }

  private boolean await(int l, Probe probe, double temperature, boolean rising) {
    lane[l].awaiting = true;
    Reading reading = core;
    lane[l].place = 0;
    if (!probe.isCore()) {
      double distance = Math.abs(probe.distanceFromMiddle(lane[l].cook.cut().shape()));
      lane[l].place = Math.min(1, distance / lane[l].length);
      reading = Reading.at(grid, lane[l].place);
    }
    lane[l].threshold.set(reading, temperature, rising);
    double now = reading.ofLane(stepper.value, l) + reading.upperWeight() * stepper.stageFace[0][l];
    return lane[l].threshold.missing(now) <= 0;
  }

  /** Balances the face at once and corrects the cells' rates by the change of the flow. */
  private boolean restart(int l, SurfaceLaw law) {
    int n = grid.cells();
    double near = stepper.value[n - 1][l];
    balance.kappa(stepper.kappa[l]);
    balance.laws(law, law);
    balance.origin[State.UPPER] = near;
    balance.offset[State.UPPER] = grid.upper().next() * (stepper.value[n - 2][l] - near);
    balance.gain[State.UPPER][State.UPPER] = grid.upper().face();
    oneFace[State.UPPER] = stepper.stageFace[0][l];
    if (!balance.solve(stepper.time[l], oneFace, oneFlow, oneEvaporation)) {
      return false;
    }
    double change = stepper.timeScale[l] * (oneFlow[State.UPPER] - stepper.flow[l]);
    for (int i = 0; i < n; i++) {
      stepper.rate[i][l] += change * faceRates[i];
    }
    stepper.stageFace[0][l] = oneFace[State.UPPER];
    stepper.faceRate.start[l] = 0;
    stepper.watch(l);
    double flowBefore = stepper.flow[l];
    stepper.flow[l] = oneFlow[State.UPPER];
    stepper.evaporation.start[l] = oneEvaporation[State.UPPER];
    if (tangents != null) {
      tangents.restarted(l, lane[l].stage, law, flowBefore, lane[l].peak.temperature);
    }
    return true;
  }

  private void judge(int l, MemberRecord record) {
    double error = stepper.solved[l] ? stepper.error[l] : Double.NaN;
    double growth = stepper.growth[l];
    StageProgress stageProgress = lane[l].progress;
    double time = stepper.time[l];
    if (!stageProgress.accepts(error)) {
      lane[l].verdict = stageProgress.refuse(stepper.solved[l], error, growth);
    } else if (lane[l].awaiting) {
      lane[l].verdict =
          stageProgress.keep(
              time, error, growth, lane[l].threshold, reading(l, lane[l].threshold.reading()));
    } else {
      lane[l].verdict = stageProgress.keep(time, error, growth);
    }
    if (!lane[l].stands()) {
      stepper.repeat(l);
      if (tangents != null) {
        tangents.repeat(l);
      }
      lane[l].rejected++;
      return;
    }
    lane[l].accepted++;
    double end =
        lane[l].verdict == StageProgress.Verdict.ACCEPT_LAST
            ? stageProgress.end()
            : time + stepper.step[l];
    StepReading coreReading = reading(l, core);
    lane[l].peak.step(time, end, coreReading);
    if (record.hasSamples()) {
      record.sample(lane[l].member, time, end, coreReading);
    }
    lane[l].evaporated += stepper.step[l] * stepper.meanEvaporation[l];
    if (tangents != null) {
      differentiated(l, end, tangents);
    }
    stepper.time[l] = end;
  }

  private void differentiated(int l, double end, LaneTangents by) {
    by.accepted(l);
    Lane of = lane[l];
    boolean ended = of.meetsRule();
    if (ended) {
      by.ended(l, of.stage, of.rule(), of.threshold.reading(), of.place);
    }
    by.sample(l, of.member, stepper.time[l], end, ended, of.peak);
  }

  private StepReading reading(int l, Reading reading) {
    if (reading == core) {
      return step.cells(
          stepper.step[l],
          stepper.watched.start[l],
          stepper.watchedRate.start[l],
          stepper.watched.end[l],
          stepper.watchedRate.end[l]);
    }
    step.cells(
        stepper.step[l],
        reading.ofLane(stepper.value, l),
        reading.ofLane(stepper.rate, l),
        reading.ofLane(stepper.nextValue, l),
        reading.ofLane(stepper.nextRate, l));
    if (reading.upperWeight() != 0) {
      double[][] face = stepper.stageFace;
      double inStages = Math.max(face[Cubic.STAGE_0][l], face[Cubic.STAGE_1][l]);
      double later = Math.max(face[Cubic.STAGE_2][l], face[Cubic.STAGE_3][l]);
      step.addFace(
          reading.upperWeight(),
          Math.max(laws.highest(l), Math.max(inStages, later)),
          face[Cubic.STAGE_0][l],
          face[Cubic.STAGE_1][l],
          face[Cubic.STAGE_2][l],
          face[Cubic.STAGE_3][l]);
    }
    return step;
  }

  /**
   * What follows from the verdict: the lane goes on, enters its next stage, or takes another
   * member.
   */
  private void follow(int l, LaneMembers members, MemberRecord record) {
    boolean busy =
        switch (lane[l].verdict) {
          case ACCEPT, REPEAT -> withinSteps(l, record);
          case GIVE_UP -> {
            byte code =
                stepper.solved[l] ? MemberRecord.STEP_TOO_SMALL : MemberRecord.FACE_UNBALANCED;
            finish(l, code, record);
            yield false;
          }
          case ACCEPT_LAST -> {
            if (lane[l].awaiting) {
              finish(l, MemberRecord.END_RULE_NOT_MET, record);
              yield false;
            }
            stageEnded(l, record);
            yield nextStage(l, record);
          }
          case ACCEPT_THRESHOLD -> {
            stageEnded(l, record);
            yield nextStage(l, record);
          }
        };
    if (!busy && !begin(l, members, record)) {
      lanes--;
      move(lanes, l);
    }
  }

  private boolean withinSteps(int l, MemberRecord record) {
    if (lane[l].accepted + lane[l].rejected < accuracy.mostSteps()) {
      return true;
    }
    finish(l, MemberRecord.TOO_MANY_STEPS, record);
    return false;
  }

  private void stageEnded(int l, MemberRecord record) {
    record.peaked(lane[l].member, lane[l].stage, lane[l].peak);
    record.stageEnded(
        lane[l].member,
        lane[l].stage,
        stepper.time[l],
        core.ofLane(stepper.value, l),
        stepper.stageFace[0][l]);
    if (tangents != null) {
      tangents.stageEnded(l, lane[l].member, lane[l].stage);
    }
  }

  private void finish(int l, byte code, MemberRecord record) {
    if (code != MemberRecord.COMPLETED) {
      record.peaked(lane[l].member, lane[l].stage, lane[l].peak);
    }
    record.finished(
        lane[l].member,
        code,
        lane[l].stage,
        lane[l].accepted,
        lane[l].rejected,
        lane[l].evaporated);
    if (tangents != null) {
      tangents.finished(l, lane[l].member, lane[l].stage, code == MemberRecord.COMPLETED);
    }
  }

  private void move(int from, int to) {
    if (from == to) {
      return;
    }
    stepper.move(from, to);
    laws.move(from, to);
    if (tangents != null) {
      tangents.move(from, to);
    }
    Lane spare = lane[to];
    lane[to] = lane[from];
    lane[from] = spare;
  }
}
