package org.roastfield.core.integration;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.grid.Grid;

/**
 * The members that lanes can take, one after another; others are computed on the way by the single
 * cook's driver, and those that cannot be built are said to be so.
 */
final class LaneQueue {

  private final Grid grid;
  private final AloneIntegration alone;
  private final @Nullable TangentRecord tangents;
  private Cook cook;
  private int member;
  private List<CookVariation> variations = List.of();

  /**
   * @param grid of the lanes
   * @param tangents where derivatives are kept, or null if none are wanted
   */
  LaneQueue(
      Grid grid,
      Cook template,
      CookIntegration.Accuracy accuracy,
      @Nullable TangentRecord tangents) {
    this.grid = grid;
    this.tangents = tangents;
    alone = new AloneIntegration(template, accuracy);
    cook = template;
  }

  /** Goes to the next member that has work for a lane; false if there is none. */
  boolean next(LaneMembers members, MemberRecord record) {
    for (int next = members.next(); next >= 0; next = members.next()) {
      member = next;
      if (builds(members, record)) {
        if (fits(cook)) {
          return true;
        }
        runAlone(members, record);
      }
    }
    return false;
  }

  private boolean builds(LaneMembers members, MemberRecord record) {
    try {
      cook = members.cook(member);
      if (tangents != null) {
        variations = members.variations(member, cook);
      }
      return true;
    } catch (RuntimeException cause) {
      notBuilt(cause, members, record);
      return false;
    }
  }

  private void runAlone(LaneMembers members, MemberRecord record) {
    if (tangents == null) {
      runPlain(members, record);
      return;
    }
    try {
      alone.run(cook, variations, member, record, tangents);
    } catch (IllegalArgumentException withoutDerivatives) {
      notBuilt(withoutDerivatives, members, record);
    }
  }

  private void runPlain(LaneMembers members, MemberRecord record) {
    Standing before = members.standing(member);
    Standing from = before != null && before.isStartOf(cook) ? before : null;
    CookIntegration end = alone.run(cook, from, member, record);
    if (record.status[member] == MemberRecord.COMPLETED) {
      members.ended(member, end, record);
    }
  }

  private void notBuilt(RuntimeException cause, LaneMembers members, MemberRecord record) {
    members.notBuilt(member, cause);
    record.finished(member, MemberRecord.NOT_BUILT, 0, 0, 0, Double.NaN);
  }

  private boolean fits(Cook candidate) {
    return candidate.isSymmetric()
        && !candidate.remembers()
        && candidate.cut().material().isConstant()
        && !grid.isTwoSided()
        && candidate.cut().shape().exponent() == grid.exponent();
  }

  /** Cook of the member. */
  Cook cook() {
    return cook;
  }

  /** Index of the member. */
  int member() {
    return member;
  }

  /** How its cook changes with each parameter; empty if no derivatives are wanted. */
  List<CookVariation> variations() {
    return variations;
  }
}
