package org.roastfield.core.cook;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.internal.Check;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Turns of a cut in one stage: how long it lies still before the first turn, between turns, and
 * after the last. Each of these legs becomes a stage of its own, since surface conditions jump.
 *
 * @param legs durations in order [s], at least one
 */
public record Turns(List<Double> legs) {

  /**
   * @throws IllegalArgumentException if there is no leg, or one has no length
   */
  public Turns {
    legs = List.copyOf(legs);
    Check.inRange("number of legs", legs.size(), 1, 10_000);
    for (int i = 0; i < legs.size(); i++) {
      Check.inRange("legs[" + i + "]", legs.get(i), Double.MIN_NORMAL, StageEnd.LONGEST);
    }
  }

  /**
   * Legs of equal length.
   *
   * @param period length of a leg [s]
   * @param legs how many: one more than the turns
   */
  public static Turns every(double period, int legs) {
    Check.inRange("number of legs", legs, 1, 10_000);
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < legs; i++) {
      all.add(period);
    }
    return new Turns(all);
  }

  /**
   * Turns at given times.
   *
   * @param duration of the whole stage [s]
   * @param times of the turns since the start of the stage [s], increasing, inside it; not modified
   */
  public static Turns at(double duration, double... times) {
    List<Double> legs = new ArrayList<>();
    double last = 0;
    for (int i = 0; i < times.length; i++) {
      if (!(times[i] > last && times[i] < duration)) {
        throw new IllegalArgumentException(
            "times["
                + i
                + "] must be after "
                + last
                + " and before the stage's end at "
                + duration
                + " s, was "
                + times[i]);
      }
      legs.add(times[i] - last);
      last = times[i];
    }
    legs.add(duration - last);
    return new Turns(legs);
  }

  /** Duration of all legs [s]. */
  public double duration() {
    return legs.stream().mapToDouble(Double::doubleValue).sum();
  }

  /**
   * A slab flipped at each turn: the laws belong to places, so the faces change over.
   *
   * @param name of the stage; legs are called "name, turn 1" and so on
   * @param above law of what is above the slab, at first of its upper face
   * @param below law of what is below it, such as a grate
   */
  public List<Stage> flips(String name, SurfaceLaw above, SurfaceLaw below) {
    List<Stage> stages = new ArrayList<>();
    for (int i = 0; i < legs.size(); i++) {
      String leg = name + ", turn " + (i + 1);
      StageEnd end = StageEnd.after(legs.get(i));
      stages.add(
          i % 2 == 0
              ? Stage.ofFaces(leg, above, below, end)
              : Stage.ofFaces(leg, below, above, end));
    }
    return List.copyOf(stages);
  }

  /**
   * One side of a round cut rolled over a grate: on it for one leg, off it until every other side
   * has had a turn. The side is followed as if it were all of the surface: its own temperature is
   * seen, and heat that goes around the cut is not. For the mean over the circumference see {@link
   * SurfaceLaw#shared}.
   *
   * @param name of the stage; legs are called "name, round 1 on" and "name, round 1 off"
   * @param on law of a side on the grate
   * @param off law of a side off it
   * @param sides how many, which must divide the number of legs
   */
  public List<Stage> rolls(String name, SurfaceLaw on, SurfaceLaw off, int sides) {
    Check.inRange("sides", sides, 1, legs.size());
    if (legs.size() % sides != 0) {
      throw new IllegalArgumentException(
          "sides must divide the " + legs.size() + " legs, was " + sides);
    }
    List<Stage> stages = new ArrayList<>();
    for (int first = 0; first < legs.size(); first += sides) {
      String round = name + ", round " + (first / sides + 1);
      stages.add(Stage.allRound(round + " on", on, StageEnd.after(legs.get(first))));
      double rest = 0;
      for (int i = first + 1; i < first + sides; i++) {
        rest += legs.get(i);
      }
      if (sides > 1) {
        stages.add(Stage.allRound(round + " off", off, StageEnd.after(rest)));
      }
    }
    return List.copyOf(stages);
  }
}
