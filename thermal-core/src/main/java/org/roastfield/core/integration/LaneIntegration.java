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
  private final AloneIntegration alone;
  private final Reading core;
  private final LaneStepper stepper;
  private final LaneLaws laws;
  private final FaceBalance balance;
  private final double[] faceRates;
  private final int width;

  private final Cook[] cooks;
  private final int[] member;
  private final int[] stage;
  private final boolean[] awaiting;
  private final Threshold[] threshold;
  private final StageProgress[] progress;
  private final StageProgress.Verdict[] verdict;
  private final RunningPeak[] peak;
  private final double[] firstStep;
  private final double[] length;
  private final double[] evaporated;
  private final int[] accepted;
  private final int[] rejected;
  private final StepReading step = new StepReading();
  private final double[] oneFace = new double[2];
  private final double[] oneFlow = new double[2];
  private final double[] oneEvaporation = new double[2];
  private int lanes;

  /**
   * @param template cook whose shape and size define the grid over ξ
   * @param width number of lanes
   */
  public LaneIntegration(Cook template, CookIntegration.Accuracy accuracy, int width) {
    this.grid = CookIntegration.grid(template, accuracy);
    this.accuracy = accuracy;
    this.alone = new AloneIntegration(template, accuracy);
    this.width = width;
    this.core = Reading.at(grid, 0);
    this.laws = new LaneLaws(width);
    ScaledMaterial unit = new ScaledMaterial(Material.constant("unit", 1, 1, 1));
    this.balance = new FaceBalance(unit, 1, 1, accuracy.tolerance(), new Counters());
    this.stepper = new LaneStepper(grid, width, accuracy.tolerance(), core, balance, laws);
    this.faceRates = ConductionMatrix.faceRates(grid);
    cooks = new Cook[width];
    member = new int[width];
    stage = new int[width];
    awaiting = new boolean[width];
    threshold = new Threshold[width];
    progress = new StageProgress[width];
    verdict = new StageProgress.Verdict[width];
    peak = new RunningPeak[width];
    firstStep = new double[width];
    length = new double[width];
    evaporated = new double[width];
    accepted = new int[width];
    rejected = new int[width];
    for (int l = 0; l < width; l++) {
      threshold[l] = new Threshold(core, 0, true);
      progress[l] = new StageProgress(accuracy.tolerance());
      peak[l] = new RunningPeak();
    }
  }

  /** Computes members until there is none left. */
  public void run(LaneMembers members, MemberRecord record) {
    lanes = 0;
    fill(members, record);
    while (lanes > 0 && !members.isCancelled()) {
      for (int l = 0; l < lanes; l++) {
        stepper.step[l] = progress[l].nextStep(stepper.time[l]);
      }
      laws.countOthers(lanes);
      stepper.attempt(lanes);
      for (int l = 0; l < lanes; l++) {
        judge(l, record);
      }
      stepper.swap();
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
    for (int next = members.next(); next >= 0; next = members.next()) {
      Cook cook = build(next, members, record);
      if (cook == null) {
        continue;
      }
      if (!fits(cook)) {
        alone.run(cook, next, record);
      } else if (start(l, next, cook, record)) {
        return true;
      }
    }
    return false;
  }

  private static @Nullable Cook build(int next, LaneMembers members, MemberRecord record) {
    try {
      return members.cook(next);
    } catch (RuntimeException notBuilt) {
      members.notBuilt(next, notBuilt);
      record.finished(next, MemberRecord.NOT_BUILT, 0, 0, 0, Double.NaN);
      return null;
    }
  }

  private boolean fits(Cook cook) {
    return cook.isSymmetric()
        && !cook.remembers()
        && cook.cut().material().isConstant()
        && !grid.isTwoSided()
        && cook.cut().shape().exponent() == grid.exponent();
  }

  private boolean start(int l, int next, Cook cook, MemberRecord record) {
    Shape shape = cook.cut().shape();
    ScaledMaterial material = new ScaledMaterial(cook.cut().material());
    double start = cook.cut().startTemperature();
    length[l] = shape.halfThickness();
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
    firstStep[l] =
        StageProgress.firstStep(accuracy.tolerance()) * cell * cell / stepper.timeScale[l];
    cooks[l] = cook;
    member[l] = next;
    stage[l] = -1;
    record.begins(next, 0, start);
    evaporated[l] = 0;
    accepted[l] = 0;
    rejected[l] = 0;
    return nextStage(l, record);
  }

  /** Enters the next stage that takes time; false if the member is finished. */
  private boolean nextStage(int l, MemberRecord record) {
    for (stage[l]++; stage[l] < cooks[l].stages().size(); stage[l]++) {
      Stage next = cooks[l].stages().get(stage[l]);
      peak[l].begin(stepper.time[l], core.ofLane(stepper.value, l));
      laws.set(l, next.upper());
      if (!restart(l, next.upper())) {
        finish(l, MemberRecord.FACE_UNBALANCED, record);
        return false;
      }
      boolean met = await(l, next.end());
      double duration = next.end().longest(stepper.time[l]);
      if (!met && duration > 0) {
        progress[l].begin(stepper.time[l] + duration, next.upper().shortestPeriod(), firstStep[l]);
        return true;
      }
      if (!met && awaiting[l]) {
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
    awaiting[l] = false;
    if (rule instanceof StageEnd.Rises rises) {
      return await(l, rises.probe(), rises.temperature(), true);
    }
    if (rule instanceof StageEnd.Falls falls) {
      return await(l, falls.probe(), falls.temperature(), false);
    }
    return false;
  }

  private boolean await(int l, Probe probe, double temperature, boolean rising) {
    awaiting[l] = true;
    Reading reading = core;
    if (!probe.isCore()) {
      double distance = Math.abs(probe.distanceFromMiddle(cooks[l].cut().shape()));
      reading = Reading.at(grid, Math.min(1, distance / length[l]));
    }
    threshold[l].set(reading, temperature, rising);
    double now = reading.ofLane(stepper.value, l) + reading.upperWeight() * stepper.stageFace[0][l];
    return threshold[l].missing(now) <= 0;
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
    stepper.faceRate[l] = 0;
    stepper.watch(l);
    stepper.flow[l] = oneFlow[State.UPPER];
    stepper.evaporation[l] = oneEvaporation[State.UPPER];
    return true;
  }

  private void judge(int l, MemberRecord record) {
    double error = stepper.solved[l] ? stepper.error[l] : Double.NaN;
    double growth = stepper.growth[l];
    StageProgress stageProgress = progress[l];
    double time = stepper.time[l];
    if (!stageProgress.accepts(error)) {
      verdict[l] = stageProgress.refuse(stepper.solved[l], error, growth);
    } else if (awaiting[l]) {
      verdict[l] =
          stageProgress.keep(time, error, growth, threshold[l], reading(l, threshold[l].reading()));
    } else {
      verdict[l] = stageProgress.keep(time, error, growth);
    }
    if (verdict[l] == StageProgress.Verdict.REPEAT || verdict[l] == StageProgress.Verdict.GIVE_UP) {
      stepper.repeat(l);
      rejected[l]++;
      return;
    }
    accepted[l]++;
    double end =
        verdict[l] == StageProgress.Verdict.ACCEPT_LAST
            ? stageProgress.end()
            : time + stepper.step[l];
    StepReading coreReading = reading(l, core);
    peak[l].step(time, end, coreReading);
    if (record.hasSamples()) {
      record.sample(member[l], time, end, coreReading);
    }
    evaporated[l] += stepper.step[l] * stepper.meanEvaporation[l];
    stepper.time[l] = end;
    stepper.keepFace(l);
  }

  private StepReading reading(int l, Reading reading) {
    if (reading == core) {
      return step.cells(
          stepper.step[l],
          stepper.watched[l],
          stepper.watchedRate[l],
          stepper.nextWatched[l],
          stepper.nextWatchedRate[l]);
    }
    step.cells(
        stepper.step[l],
        reading.ofLane(stepper.value, l),
        reading.ofLane(stepper.rate, l),
        reading.ofLane(stepper.nextValue, l),
        reading.ofLane(stepper.nextRate, l));
    if (reading.upperWeight() != 0) {
      step.addFace(
          reading.upperWeight(),
          stepper.stageFace[Cubic.STAGE_0][l],
          stepper.stageFace[Cubic.STAGE_1][l],
          stepper.stageFace[Cubic.STAGE_2][l],
          stepper.stageFace[Cubic.STAGE_3][l]);
    }
    return step;
  }

  /**
   * What follows from the verdict: the lane goes on, enters its next stage, or takes another
   * member.
   */
  private void follow(int l, LaneMembers members, MemberRecord record) {
    boolean busy =
        switch (verdict[l]) {
          case ACCEPT, REPEAT -> withinSteps(l, record);
          case GIVE_UP -> {
            byte code =
                stepper.solved[l] ? MemberRecord.STEP_TOO_SMALL : MemberRecord.FACE_UNBALANCED;
            finish(l, code, record);
            yield false;
          }
          case ACCEPT_LAST -> {
            if (awaiting[l]) {
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
    if (accepted[l] + rejected[l] < accuracy.mostSteps()) {
      return true;
    }
    finish(l, MemberRecord.TOO_MANY_STEPS, record);
    return false;
  }

  private void stageEnded(int l, MemberRecord record) {
    record.peaked(member[l], stage[l], peak[l]);
    record.stageEnded(
        member[l],
        stage[l],
        stepper.time[l],
        core.ofLane(stepper.value, l),
        stepper.stageFace[0][l]);
  }

  private void finish(int l, byte code, MemberRecord record) {
    if (code != MemberRecord.COMPLETED) {
      record.peaked(member[l], stage[l], peak[l]);
    }
    record.finished(member[l], code, stage[l], accepted[l], rejected[l], evaporated[l]);
  }

  private void move(int from, int to) {
    if (from == to) {
      return;
    }
    stepper.move(from, to);
    laws.move(from, to);
    cooks[to] = cooks[from];
    member[to] = member[from];
    stage[to] = stage[from];
    awaiting[to] = awaiting[from];
    firstStep[to] = firstStep[from];
    length[to] = length[from];
    evaporated[to] = evaporated[from];
    accepted[to] = accepted[from];
    rejected[to] = rejected[from];
    swap(threshold, from, to);
    swap(progress, from, to);
    swap(peak, from, to);
  }

  private static <T> void swap(T[] array, int from, int to) {
    T spare = array[to];
    array[to] = array[from];
    array[from] = spare;
  }
}
