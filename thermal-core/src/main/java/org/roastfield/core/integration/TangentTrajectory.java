package org.roastfield.core.integration;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.grid.Reading;

/**
 * Derivatives of all steps of a {@link Trajectory}, from which those of temperatures anywhere and
 * at any time are read.
 *
 * <p>A node is a state: temperatures and rates of the cells of each parameter. A stage begins with
 * a node of its own, each step ends with one.
 */
public final class TangentTrajectory {

  private static final int FACE_VALUES = 4;
  private static final int[] STAGES = {Cubic.STAGE_0, Cubic.STAGE_1, Cubic.STAGE_2, Cubic.STAGE_3};

  /**
   * Numbers of a step for each parameter: faces, change of its start, change of its length, water
   * that the faces drew out of the cut.
   */
  private static final int START = 2 * FACE_VALUES;

  private static final int LENGTH = START + 1;
  private static final int DRAWN = LENGTH + 1;
  private static final int STEP_NUMBERS = DRAWN + 2;

  private final Trajectory plain;
  private final List<Node> nodes = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();

  TangentTrajectory(Trajectory plain) {
    this.plain = plain;
  }

  /** Arrays of [parameters][cells], taken over from the integration. */
  private static final class Node {
    private final double[][] temperature;
    private final double[][] rate;

    Node(Tangents tangents) {
      temperature = tangents.temperature.clone();
      rate = tangents.rate.clone();
    }
  }

  private static final class Step {
    private final Node start;
    private final Node end;
    private final double[] numbers;

    Step(Node start, Node end, Tangents tangents, boolean[] crusted) {
      this.start = start;
      this.end = end;
      numbers = new double[tangents.size() * STEP_NUMBERS];
      for (int p = 0; p < tangents.size(); p++) {
        int at = p * STEP_NUMBERS;
        for (int j = 0; j < FACE_VALUES; j++) {
          numbers[at + j] = tangents.stageFace[STAGES[j]][State.UPPER][p];
          numbers[at + FACE_VALUES + j] = tangents.stageFace[STAGES[j]][State.LOWER][p];
        }
        numbers[at + START] = tangents.time[p] - tangents.length[p];
        numbers[at + LENGTH] = tangents.length[p];
        numbers[at + DRAWN] = tangents.drawn(State.UPPER, p, crusted[State.UPPER]);
        numbers[at + DRAWN + 1] = tangents.drawn(State.LOWER, p, crusted[State.LOWER]);
      }
    }
  }

  /** Keeps the node at the start of a stage. */
  void restarted(Tangents tangents) {
    nodes.add(new Node(tangents));
  }

  /** Keeps a step. */
  void accepted(Tangents tangents) {
    Node start = nodes.get(nodes.size() - 1);
    Node end = new Node(tangents);
    nodes.add(end);
    steps.add(new Step(start, end, tangents, crusted(steps.size())));
  }

  /** Keeps the last step anew, after its length was found to change. */
  void lengthened(Tangents tangents) {
    Node end = new Node(tangents);
    nodes.set(nodes.size() - 1, end);
    int last = steps.size() - 1;
    steps.set(last, new Step(steps.get(last).start, end, tangents, crusted(last)));
  }

  private boolean[] crusted(int step) {
    return new boolean[] {plain.isCrusted(step, State.UPPER), plain.isCrusted(step, State.LOWER)};
  }

  /** The steps that these are the derivatives of. */
  public Trajectory plain() {
    return plain;
  }

  /** The steps as they would be with one parameter moved, to first order. */
  public Trajectory moved(int parameter, double amount) {
    Trajectory moved = plain.copied();
    int own = parameter * STEP_NUMBERS;
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      double start = step.numbers[own + START];
      moved.move(
          i,
          amount,
          start,
          start + step.numbers[own + LENGTH],
          step.numbers,
          own,
          own + DRAWN,
          step.start.temperature[parameter],
          step.start.rate[parameter],
          step.end.temperature[parameter],
          step.end.rate[parameter]);
    }
    return moved;
  }

  /**
   * Derivative of a reading at a fixed time [K per unit of the parameter].
   *
   * @param index of a step
   * @param time inside the step [s]
   */
  public double inStep(int parameter, TangentReading reading, int index, double time) {
    if (reading.isLimited()) {
      double value = plain.inStep(reading.value(), index, time);
      double a = plain.inStep(reading.neighbour(0), index, time);
      double b = plain.inStep(reading.neighbour(1), index, time);
      double c = plain.inStep(reading.neighbour(2), index, time);
      double kept = Reading.limited(value, a, b, c);
      if (kept != value) {
        double da = moving(parameter, reading.neighbour(0), index, time);
        double db = moving(parameter, reading.neighbour(1), index, time);
        double dc = moving(parameter, reading.neighbour(2), index, time);
        double side = kept > value ? -1 : 1;
        return atLimit(side, side * a, side * b, side * c, side * da, side * db, side * dc);
      }
    }
    double change = moving(parameter, reading.value(), index, time);
    double place = reading.place(parameter);
    return place == 0 ? change : change + place * plain.inStep(reading.slope(), index, time);
  }

  /** Change of the upper limit of {@link Reading#limited}; all is turned by {@code side}. */
  private static double atLimit(
      double side, double a, double b, double c, double da, double db, double dc) {
    double left = b - a;
    double right = c - b;
    double margin = 0;
    if (left * right < 0) {
      margin =
          Math.abs(left) < Math.abs(right)
              ? Math.signum(left) * (db - da)
              : Math.signum(right) * (dc - db);
    }
    double highest = b >= a && b >= c ? db : a >= c ? da : dc;
    return side * (highest + margin);
  }

  /** Change at a fixed time of a reading that stays where it is. */
  private double moving(int parameter, Reading reading, int index, double time) {
    Step step = steps.get(index);
    double start = plain.stepStart(index);
    double h = plain.stepEnd(index) - start;
    double theta = (time - start) / h;
    int own = parameter * STEP_NUMBERS;
    double length = step.numbers[own + LENGTH];
    double value = linear(parameter, reading, index, theta, h);
    if (length != 0) {
      value += length * plain.lengthEffect(reading, index, theta);
    }
    double shift = step.numbers[own + START] + theta * length;
    return shift == 0 ? value : value - shift * plain.rateInStep(reading, index, theta);
  }

  /** Dense output of the derivatives of the step's own numbers. */
  private double linear(int parameter, Reading reading, int index, double theta, double h) {
    Step step = steps.get(index);
    int own = parameter * STEP_NUMBERS;
    double value =
        Cubic.hermite(
            theta,
            h,
            reading.ofCells(step.start.temperature[parameter], 0),
            reading.ofCells(step.start.rate[parameter], 0),
            reading.ofCells(step.end.temperature[parameter], 0),
            reading.ofCells(step.end.rate[parameter], 0));
    if (reading.upperWeight() != 0) {
      value += reading.upperWeight() * face(index, State.UPPER, step.numbers, own, theta);
    }
    if (reading.lowerWeight() != 0) {
      int lower = own + FACE_VALUES;
      value += reading.lowerWeight() * face(index, State.LOWER, step.numbers, lower, theta);
    }
    return value;
  }

  private double face(int index, int face, double[] y, int at, double theta) {
    if (plain.isHeld(index, face, theta)) {
      int held = plain.heldAt(index, face);
      return held < 0 ? 0 : y[at + held];
    }
    return Cubic.throughStages(theta, y[at], y[at + 1], y[at + 2], y[at + 3]);
  }
}
