package org.roastfield.core.integration;

import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Stage;

/**
 * Where a cook stood at the end of its last stage, and what was recorded of it until then: another
 * that begins with the same stages goes on from there, with the bits of one that was computed
 * whole. Immutable; any number of cooks go on from one.
 */
public final class Standing {

  private final Cook cook;
  private final double begun;
  private final State state;
  private final Counters counters;
  private final MemberRecord record;
  private final int member;

  /**
   * @param begun when the stage began whose surroundings would go on [s]
   * @param state copied
   * @param counters copied
   * @param member of {@code record}, which keeps its numbers
   */
  Standing(
      Cook cook, double begun, State state, Counters counters, MemberRecord record, int member) {
    this.cook = cook;
    this.begun = begun;
    this.state = state.copied();
    this.counters = new Counters();
    this.counters.copy(counters);
    this.record = record;
    this.member = member;
  }

  /** Stages that are behind it. */
  int stages() {
    return cook.stages().size();
  }

  double begun() {
    return begun;
  }

  State state() {
    return state;
  }

  Counters counters() {
    return counters;
  }

  /** Whether a cook begins with all that is behind this one. */
  boolean isStartOf(Cook other) {
    boolean sameBody = cook.cut().equals(other.cut()) && cook.isSymmetric() == other.isSymmetric();
    if (!sameBody || other.stages().size() < stages()) {
      return false;
    }
    for (int i = 0; i < stages(); i++) {
      if (!isSame(cook.stages().get(i), other.stages().get(i))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSame(Stage one, Stage other) {
    return one.upper().equals(other.upper())
        && one.lower().equals(other.lower())
        && one.end().equals(other.end())
        && one.wetting().equals(other.wetting())
        && one.continued() == other.continued();
  }

  /** Copies what was recorded into a member of another record, of the same sample times or none. */
  void copyInto(MemberRecord other, int otherMember) {
    other.copy(otherMember, record, member, stages());
  }
}
