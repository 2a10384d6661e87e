package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Wetting;

/**
 * The stages that a plan makes of a cook: its gentle heat ends by the display, in two legs of which
 * the second begins {@link Plan#AHEAD} short of the end; its rest is the least one; and after that
 * it is kept until it is carved.
 */
final class Course {

  /** Indices of the stages that end with these events. */
  final int near;

  final int pull;
  final int pause;
  final int sear;
  final int rest;
  final int hold;

  /** Index of the last stage before the gentle heat, −1 if there is none. */
  final int firstSear;

  private final List<Role> roles;

  Course(List<Role> roles) {
    this.roles = roles;
    int lastGentle = roles.lastIndexOf(Role.GENTLE);
    firstSear = roles.indexOf(Role.GENTLE) - 1;
    near = lastGentle;
    pull = near + 1;
    int lastPause = roles.lastIndexOf(Role.PAUSE);
    pause = lastPause < 0 ? pull : lastPause + 1;
    rest = roles.indexOf(Role.REST) + 1;
    sear = rest - 1;
    hold = rest + 1;
  }

  /** Whether something is between the gentle heat and the rest. */
  boolean searsLast() {
    return roles.get(roles.indexOf(Role.REST) - 1) == Role.SEAR;
  }

  /** A member's cook up to the pull. */
  Cook upToPull(Member member, double tip, double tipBefore) {
    List<Stage> stages = new ArrayList<>();
    gentle(member, tip, tipBefore, stages);
    return new Cook(member.cook().cut(), stages, List.of());
  }

  /**
   * A member's cook up to carving.
   *
   * @param tip true temperature of the tip at the pull [K]
   * @param tipBefore the same when the display is nearly there [K]
   * @param leastRest [s]
   * @param leave when it is carved, if it has rested, since the start of the cook [s]
   */
  Cook whole(Member member, double tip, double tipBefore, double leastRest, double leave) {
    List<Stage> stages = new ArrayList<>();
    gentle(member, tip, tipBefore, stages);
    return finished(member, stages, leastRest, leave);
  }

  /**
   * A member's cook up to carving, off the gentle heat by the clock; its gentle heat is one leg.
   *
   * @param pull since the start of the cook [s]
   * @param leastRest [s]
   * @param leave since the start of the cook [s]
   */
  Cook timed(Member member, double pull, double leastRest, double leave) {
    int last = roles.lastIndexOf(Role.GENTLE);
    List<Stage> stages = new ArrayList<>(member.cook().stages().subList(0, last));
    stages.add(ending(member.cook().stages().get(last), StageEnd.at(pull)));
    return finished(member, stages, leastRest, leave);
  }

  private Cook finished(Member member, List<Stage> stages, double leastRest, double leave) {
    List<Stage> own = member.cook().stages();
    int resting = roles.indexOf(Role.REST);
    for (int i = roles.lastIndexOf(Role.GENTLE) + 1; i < resting; i++) {
      stages.add(own.get(i));
    }
    stages.add(ending(own.get(resting), StageEnd.after(leastRest)));
    Stage kept = own.get(own.size() - 1);
    boolean same = own.size() - 1 == resting;
    StageEnd end = StageEnd.at(leave);
    stages.add(same ? continuing(kept, "hold", end) : ending(kept, end));
    return new Cook(member.cook().cut(), stages, List.of());
  }

  private void gentle(Member member, double tip, double tipBefore, List<Stage> stages) {
    List<Stage> own = member.cook().stages();
    int last = roles.lastIndexOf(Role.GENTLE);
    stages.addAll(own.subList(0, last));
    Stage gentle = own.get(last);
    double longest = gentle.end().longest(0);
    stages.add(ending(gentle, new StageEnd.Rises(member.tip(), tipBefore, longest)));
    stages.add(continuing(gentle, gentle.name(), new StageEnd.Rises(member.tip(), tip, longest)));
  }

  private static Stage ending(Stage stage, StageEnd end) {
    return new Stage(
        stage.name(), stage.upper(), stage.lower(), end, stage.wetting(), stage.continued());
  }

  private static Stage continuing(Stage stage, String name, StageEnd end) {
    return new Stage(name, stage.upper(), stage.lower(), end, Wetting.NONE, true);
  }
}
