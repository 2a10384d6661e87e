package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.ensemble.EnsembleResult;

/**
 * The stages that a plan makes of a cook: its gentle heat ends by the display, in two legs of which
 * the second begins {@link Plan#AHEAD} short of the end, and two such legs before them if the fire
 * is changed on the way. A cut that is seared after that waits for its sear where it rests later;
 * its rest is the least one, and after that it is kept until it is carved. One that has a stage to
 * be kept in is seared at once.
 */
final class Course {

  /** Indices of the stages that end with these events. */
  final int near;

  final int pull;

  /** The wait for the sear; the pull where there is none. */
  final int wait;

  final int pause;
  final int sear;
  final int rest;
  final int hold;

  /** Index of the last stage before the gentle heat, −1 if there is none. */
  final int firstSear;

  /** Index of the leg up to a look at the display, −1 if there is none. */
  final int check;

  private final List<Role> roles;

  /**
   * @param checked whether the gentle heat has a leg up to a look at the display
   */
  Course(List<Role> roles, boolean checked) {
    this.roles = roles;
    int lastGentle = roles.lastIndexOf(Role.GENTLE);
    int more = checked ? 2 : 0;
    firstSear = roles.indexOf(Role.GENTLE) - 1;
    check = checked ? lastGentle + 1 : -1;
    near = lastGentle + more;
    pull = near + 1;
    wait = waits() ? pull + 1 : pull;
    int lastPause = roles.lastIndexOf(Role.PAUSE);
    more = wait - lastGentle;
    pause = lastPause < 0 ? wait : lastPause + more;
    rest = roles.indexOf(Role.REST) + more;
    sear = rest - 1;
    hold = rest + 1;
  }

  /** Whether something is between the gentle heat and the rest. */
  boolean searsLast() {
    return roles.get(roles.indexOf(Role.REST) - 1) == Role.SEAR;
  }

  /** Whether a cut that is off the gentle heat early waits for its sear. */
  boolean waits() {
    return searsLast() && !roles.contains(Role.HOLD);
  }

  /**
   * Gentle heat that goes on otherwise from a look at the display on.
   *
   * @param when ends of the legs up to the look
   * @param after the cook whose gentle heat it is after that
   */
  record Turned(List<StageEnd> when, Cook after) {}

  /** A member's cook through temperatures of the tip, in order, a leg up to each [K]. */
  Cook through(Member member, Optional<Turned> turned, double... tips) {
    List<Stage> stages = new ArrayList<>();
    gentle(member, turned, stages, rises(member, tips));
    return new Cook(member.cook().cut(), stages, List.of());
  }

  /** A member's cook on the fire as stated through legs of its gentle heat with given ends. */
  Cook through(Member member, List<StageEnd> ends) {
    List<Stage> stages = new ArrayList<>(before(member));
    legs(gentle(member.cook()), ends, stages);
    return new Cook(member.cook().cut(), stages, List.of());
  }

  /**
   * A member's cook up to carving.
   *
   * @param turned how the fire is changed, if it is
   * @param legs ends of the last legs of its gentle heat: when the display is nearly there, and at
   *     the pull
   */
  Cook whole(Member member, Optional<Turned> turned, List<StageEnd> legs, Ends ends) {
    List<Stage> stages = new ArrayList<>();
    gentle(member, turned, stages, legs);
    return finished(member, stages, ends);
  }

  /**
   * The same by temperatures of the tip.
   *
   * @param tip true one at the pull [K]
   * @param tipBefore the same when the display is nearly there [K]
   */
  Cook whole(Member member, Optional<Turned> turned, double tip, double tipBefore, Ends ends) {
    return whole(member, turned, rises(member, tipBefore, tip), ends);
  }

  /**
   * A member's cook up to carving, off the gentle heat by the clock; its gentle heat is one leg, or
   * two if the fire is changed.
   *
   * @param pull since the start of the cook [s]
   */
  Cook timed(Member member, Optional<Turned> turned, double pull, Ends ends) {
    List<Stage> stages = new ArrayList<>(before(member));
    Stage gentle = gentle(member.cook());
    if (turned.isEmpty()) {
      stages.add(ending(gentle, StageEnd.at(pull)));
    } else {
      legs(gentle, turned.get().when(), stages);
      Stage after = gentle(turned.get().after());
      stages.add(continuing(after, gentle.name(), StageEnd.at(pull)));
    }
    return finished(member, stages, ends);
  }

  /** When the gentle heat of a draw ended: at the latest where it waited in vain [s]. */
  double pulled(EnsembleResult result, int draw, Member member) {
    double end = result.stageEnd(draw, pull);
    if (end > 0) {
      return end;
    }
    double start = firstSear < 0 ? 0 : result.stageEnd(draw, firstSear);
    return start + member.cook().stages().get(near).end().longest(start);
  }

  /** How long the gentle heat of a member may take at most [s]. */
  double longest(Member member) {
    return gentle(member.cook()).end().longest(0);
  }

  private List<Stage> before(Member member) {
    return member.cook().stages().subList(0, roles.lastIndexOf(Role.GENTLE));
  }

  private Stage gentle(Cook cook) {
    return cook.stages().get(roles.lastIndexOf(Role.GENTLE));
  }

  private Cook finished(Member member, List<Stage> stages, Ends ends) {
    List<Stage> own = member.cook().stages();
    int resting = roles.indexOf(Role.REST);
    if (waits()) {
      Stage like = own.get(resting);
      stages.add(
          new Stage("wait", like.upper(), like.lower(), ends.waiting(), Wetting.NONE, false));
    }
    for (int i = roles.lastIndexOf(Role.GENTLE) + 1; i < resting; i++) {
      stages.add(own.get(i));
    }
    stages.add(ending(own.get(resting), ends.resting()));
    Stage kept = own.get(own.size() - 1);
    boolean same = own.size() - 1 == resting;
    StageEnd end = ends.keeping();
    stages.add(same ? continuing(kept, "hold", end) : ending(kept, end));
    return new Cook(member.cook().cut(), stages, List.of());
  }

  private void gentle(
      Member member, Optional<Turned> turned, List<Stage> stages, List<StageEnd> ends) {
    stages.addAll(before(member));
    Stage first = gentle(member.cook());
    if (turned.isEmpty()) {
      legs(first, ends, stages);
      return;
    }
    legs(first, turned.get().when(), stages);
    Stage after = gentle(turned.get().after());
    ends.forEach(end -> stages.add(continuing(after, first.name(), end)));
  }

  /** Ends of the gentle heat of a member at temperatures of the tip, in order [K]. */
  List<StageEnd> rises(Member member, double... tips) {
    List<StageEnd> ends = new ArrayList<>();
    for (double tip : tips) {
      ends.add(new StageEnd.Rises(member.tip(), tip, longest(member)));
    }
    return ends;
  }

  /** Adds a stage in legs. */
  private static void legs(Stage stage, List<StageEnd> ends, List<Stage> stages) {
    for (int i = 0; i < ends.size(); i++) {
      StageEnd end = ends.get(i);
      stages.add(i == 0 ? ending(stage, end) : continuing(stage, stage.name(), end));
    }
  }

  private static Stage ending(Stage stage, StageEnd end) {
    return new Stage(
        stage.name(), stage.upper(), stage.lower(), end, stage.wetting(), stage.continued());
  }

  private static Stage continuing(Stage stage, String name, StageEnd end) {
    return new Stage(name, stage.upper(), stage.lower(), end, Wetting.NONE, true);
  }
}
