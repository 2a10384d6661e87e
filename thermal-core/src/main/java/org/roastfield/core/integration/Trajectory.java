package org.roastfield.core.integration;

import org.jspecify.annotations.Nullable;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.grid.Reading;

/**
 * All accepted steps of a cook, from which temperatures anywhere and at any time are read.
 *
 * <p>One block of doubles a step: start, end, four values a face, what each face may not pass, then
 * temperatures and rates of the cells at both ends. Memory grows by doubling, so that steps do not
 * allocate.
 */
public final class Trajectory implements StepListener {

  private static final int FIRST_CAPACITY = 128;
  private static final int FACE_VALUES = 4;
  private static final int WATER_VALUES = 8;
  private static final int HIGHEST = 2 + 2 * FACE_VALUES;
  private static final int REMEMBERS = HIGHEST + 2;
  private static final int CELLS_START = REMEMBERS + 2;
  private static final int[] STAGES = {Cubic.STAGE_0, Cubic.STAGE_1, Cubic.STAGE_2, Cubic.STAGE_3};

  private final Grid grid;
  private final int cells;
  private final int block;
  private final double[] initial;
  private final double initialUpper;
  private final double initialLower;
  private double[] data;
  private double[] water = new double[0];
  private double[] drawn = new double[2 * FIRST_CAPACITY];
  private int steps;
  private final @Nullable Trajectory plain;

  /**
   * @param state at the start, copied
   */
  Trajectory(Grid grid, State state) {
    this.plain = null;
    this.grid = grid;
    this.initial = state.temperature.clone();
    this.initialUpper = state.surface(State.UPPER);
    this.initialLower = state.surface(State.LOWER);
    this.cells = grid.cells();
    this.block = CELLS_START + 4 * cells;
    this.data = new double[FIRST_CAPACITY * block];
  }

  private Trajectory(Trajectory other) {
    plain = other;
    grid = other.grid;
    cells = other.cells;
    block = other.block;
    initial = other.initial;
    initialUpper = other.initialUpper;
    initialLower = other.initialLower;
    data = java.util.Arrays.copyOf(other.data, other.steps * other.block);
    water = other.water;
    drawn = java.util.Arrays.copyOf(other.drawn, 2 * other.steps);
    steps = other.steps;
  }

  /** The same steps in memory of their own, to be moved; what faces hold stays. */
  Trajectory copied() {
    return new Trajectory(this);
  }

  /**
   * Moves a step along the derivatives of its numbers.
   *
   * @param amount that the parameter is moved by
   * @param start change of the start [s]
   * @param end change of the end [s]
   * @param faces change of the values of both faces, from {@code first} on
   * @param drawnAt where among these the water stands that they drew out of the cut
   * @param cellChanges of temperatures and rates at the start and at the end [4][cells]
   */
  void move(
      int step,
      double amount,
      double start,
      double end,
      double[] faces,
      int first,
      int drawnAt,
      double[]... cellChanges) {
    int at = step * block;
    for (int f = 0; f < 2; f++) {
      int held = heldAt(step, f);
      if (held >= 0) {
        data[at + HIGHEST + f] += amount * faces[first + f * FACE_VALUES + held];
      }
    }
    for (int f = 0; f < 2; f++) {
      drawn[2 * step + f] += amount * faces[drawnAt + f];
    }
    data[at] += amount * start;
    data[at + 1] += amount * end;
    for (int j = 0; j < 2 * FACE_VALUES; j++) {
      data[at + 2 + j] += amount * faces[first + j];
    }
    for (int k = 0; k < cellChanges.length; k++) {
      int from = at + CELLS_START + k * cells;
      for (int i = 0; i < cells; i++) {
        data[from + i] += amount * cellChanges[k][i];
      }
    }
  }

  @Override
  public void accepted(DenseStep step) {
    if ((steps + 1) * block > data.length) {
      data = java.util.Arrays.copyOf(data, 2 * data.length);
    }
    int at = steps * block;
    data[at] = step.start();
    data[at + 1] = step.end();
    for (int j = 0; j < FACE_VALUES; j++) {
      data[at + 2 + j] = step.stageFace(STAGES[j], State.UPPER);
      data[at + 2 + FACE_VALUES + j] = step.stageFace(STAGES[j], State.LOWER);
    }
    data[at + HIGHEST + State.UPPER] = step.highest(State.UPPER);
    data[at + HIGHEST + State.LOWER] = step.highest(State.LOWER);
    data[at + REMEMBERS + State.UPPER] = step.remembers(State.UPPER) ? 1 : 0;
    data[at + REMEMBERS + State.LOWER] = step.remembers(State.LOWER) ? 1 : 0;
    int start = at + CELLS_START;
    System.arraycopy(step.from().temperature, 0, data, start, cells);
    System.arraycopy(step.from().temperatureRate, 0, data, start + cells, cells);
    System.arraycopy(step.to().temperature, 0, data, start + 2 * cells, cells);
    System.arraycopy(step.to().temperatureRate, 0, data, start + 3 * cells, cells);
    if (step.to().carried.begun[State.UPPER] || step.to().carried.begun[State.LOWER]) {
      keepWater(step);
    }
    if (2 * steps + 2 > drawn.length) {
      drawn = java.util.Arrays.copyOf(drawn, 2 * drawn.length);
    }
    drawn[2 * steps] = step.to().drawn(State.UPPER);
    drawn[2 * steps + 1] = step.to().drawn(State.LOWER);
    steps++;
  }

  /** Water and its rate at both ends of a step, a face after the other. */
  private void keepWater(DenseStep step) {
    int at = steps * WATER_VALUES;
    if (at + WATER_VALUES > water.length) {
      water = java.util.Arrays.copyOf(water, 2 * (at + FIRST_CAPACITY * WATER_VALUES));
    }
    for (int f = 0; f < 2; f++) {
      CarriedFaces from = step.from().carried;
      CarriedFaces to = step.to().carried;
      water[at++] = from.water[f];
      water[at++] = from.waterRate[f];
      water[at++] = to.water[f];
      water[at++] = to.waterRate[f];
    }
  }

  /**
   * Water of a face, below 0 what a crust has lost; 0 before a law remembered it [kg/m²].
   *
   * @param upper whether it is the upper face
   * @param time from {@link #start()} to {@link #end()} [s]
   */
  public double water(boolean upper, double time) {
    int step = steps == 0 ? 0 : stepAt(time);
    int face = upper ? State.UPPER : State.LOWER;
    if (waterAt(step, face) >= water.length) {
      return 0;
    }
    return water(step, face, (time - stepStart(step)) / (stepEnd(step) - stepStart(step)));
  }

  /** Water that a face had drawn out of the cut at the share θ of a step, straight [kg/m²]. */
  double drawn(int step, int face, double theta) {
    double before = step == 0 ? 0 : drawn[2 * step - 2 + face];
    return before + theta * (drawn[2 * step + face] - before);
  }

  /** Whether a face had a crust at the end of a step. */
  boolean isCrusted(int step, int face) {
    int at = waterAt(step, face);
    return at < water.length && water[at + 2] < 0;
  }

  /** Temperature of a cell at the share θ of a step [K]. */
  double cellIn(int step, int cell, double theta) {
    return cell(cell, step * block, theta);
  }

  private static int waterAt(int step, int face) {
    return step * WATER_VALUES + face * (WATER_VALUES / 2);
  }

  private double water(int step, int face, double theta) {
    int at = waterAt(step, face);
    double h = stepEnd(step) - stepStart(step);
    return Cubic.hermite(theta, h, water[at], water[at + 1], water[at + 2], water[at + 3]);
  }

  /** The steps that these were moved from, or these. */
  Trajectory plain() {
    return plain == null ? this : plain;
  }

  public Grid grid() {
    return grid;
  }

  /** Number of accepted steps. */
  public int steps() {
    return steps;
  }

  /** Start of step {@code i} [s]. */
  public double stepStart(int i) {
    return data[i * block];
  }

  /** End of step {@code i} [s]. */
  public double stepEnd(int i) {
    return data[i * block + 1];
  }

  /** Time of the first state [s]. */
  public double start() {
    return steps == 0 ? 0 : stepStart(0);
  }

  /** Time of the last state [s]. */
  public double end() {
    return steps == 0 ? 0 : stepEnd(steps - 1);
  }

  /**
   * Temperature of a reading [K]; at a restart, where a face jumps, the value before it.
   *
   * @param time from {@link #start()} to {@link #end()} [s]
   */
  public double at(Reading reading, double time) {
    if (steps == 0) {
      return reading.of(initial, initialUpper, initialLower);
    }
    return inStep(reading, stepAt(time), time);
  }

  /** Temperature of a reading in a given step [K]. */
  public double inStep(Reading reading, int step, double time) {
    int at = step * block;
    double theta = (time - data[at]) / (data[at + 1] - data[at]);
    double value = cells(reading, at, theta);
    if (reading.upperWeight() != 0) {
      value += reading.upperWeight() * face(step, State.UPPER, theta);
    }
    if (reading.lowerWeight() != 0) {
      value += reading.lowerWeight() * face(step, State.LOWER, theta);
    }
    if (reading.isCentral()) {
      return value;
    }
    int first = reading.firstCell();
    if (reading.upperWeight() != 0) {
      return Reading.limited(
          value,
          cell(first + 1, at, theta),
          cell(first + 2, at, theta),
          face(step, State.UPPER, theta));
    }
    if (reading.lowerWeight() != 0) {
      return Reading.limited(
          value,
          face(step, State.LOWER, theta),
          cell(first, at, theta),
          cell(first + 1, at, theta));
    }
    return Reading.limited(
        value, cell(first, at, theta), cell(first + 1, at, theta), cell(first + 2, at, theta));
  }

  private double cells(Reading reading, int at, double theta) {
    int start = at + CELLS_START;
    return Cubic.hermite(
        theta,
        data[at + 1] - data[at],
        reading.ofCells(data, start),
        reading.ofCells(data, start + cells),
        reading.ofCells(data, start + 2 * cells),
        reading.ofCells(data, start + 3 * cells));
  }

  private double cell(int cell, int at, double theta) {
    int i = at + CELLS_START + cell;
    return Cubic.hermite(
        theta,
        data[at + 1] - data[at],
        data[i],
        data[i + cells],
        data[i + 2 * cells],
        data[i + 3 * cells]);
  }

  /** Rate of a reading at the share θ of a step [K/s]. */
  double rateInStep(Reading reading, int step, double theta) {
    int at = step * block;
    double h = data[at + 1] - data[at];
    int start = at + CELLS_START;
    double slope =
        Cubic.hermiteSlope(
            theta,
            h,
            reading.ofCells(data, start),
            reading.ofCells(data, start + cells),
            reading.ofCells(data, start + 2 * cells),
            reading.ofCells(data, start + 3 * cells));
    if (reading.upperWeight() != 0) {
      slope += reading.upperWeight() * faceSlope(step, State.UPPER, theta);
    }
    if (reading.lowerWeight() != 0) {
      slope += reading.lowerWeight() * faceSlope(step, State.LOWER, theta);
    }
    return slope / h;
  }

  /** Change of a reading at the share θ of a step with the step's length alone [K/s]. */
  double lengthEffect(Reading reading, int step, double theta) {
    int start = step * block + CELLS_START;
    return Cubic.hermiteByLength(
        theta, reading.ofCells(data, start + cells), reading.ofCells(data, start + 3 * cells));
  }

  private double faceSlope(int step, int face, double theta) {
    if (isHeld(step, face, theta)) {
      return 0;
    }
    int at = faceAt(step, face);
    return Cubic.throughStagesSlope(theta, data[at], data[at + 1], data[at + 2], data[at + 3]);
  }

  private int faceAt(int step, int face) {
    return step * block + 2 + face * FACE_VALUES;
  }

  private double cubic(int step, int face, double theta) {
    int at = faceAt(step, face);
    return Cubic.throughStages(theta, data[at], data[at + 1], data[at + 2], data[at + 3]);
  }

  /**
   * Temperature of a face: the cubic through its stages, or the highest that its law allows where
   * the cubic passes that.
   */
  private double face(int step, int face, double theta) {
    return isHeld(step, face, theta)
        ? data[step * block + HIGHEST + face]
        : cubic(step, face, theta);
  }

  /**
   * Whether the cubic passes the highest temperature of a face that holds water, as it does where
   * the face comes to rest at boiling or leaves it.
   */
  boolean isHeld(int step, int face, double theta) {
    return cubic(step, face, theta) > data[step * block + HIGHEST + face]
        && !isDry(step, face, theta);
  }

  /**
   * Which of a face's four values is the highest temperature that its law allows, boiling a little
   * superheated, or −1 if none is.
   */
  int heldAt(int step, int face) {
    int at = faceAt(step, face);
    double highest = data[step * block + HIGHEST + face];
    return data[at] == highest ? 0 : data[at + FACE_VALUES - 1] == highest ? FACE_VALUES - 1 : -1;
  }

  /** Whether a face whose law remembers holds no water. */
  private boolean isDry(int step, int face, double theta) {
    return data[step * block + REMEMBERS + face] != 0 && water(step, face, theta) < 0;
  }

  /** Index of the first step that ends at or after {@code time}. */
  public int stepAt(double time) {
    int low = 0;
    int high = steps - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (stepEnd(middle) < time) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
