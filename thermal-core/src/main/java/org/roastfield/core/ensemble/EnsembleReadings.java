package org.roastfield.core.ensemble;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.internal.Check;

/**
 * What a caller read of each member of an ensemble. Immutable, as far as the readings are. Members
 * count from 0.
 *
 * @param <T> what is read
 */
public final class EnsembleReadings<T> {

  private final List<Member<T>> members;

  EnsembleReadings(List<Member<T>> members) {
    this.members = List.copyOf(members);
  }

  /**
   * How a member ended.
   *
   * @param reading what was read; null unless it completed
   */
  record Member<T>(MemberStatus status, @Nullable T reading, String message) {}

  /** How many members were asked for. */
  public int size() {
    return members.size();
  }

  /** How a member ended. */
  public MemberStatus status(int member) {
    return member(member).status();
  }

  /** Why a member was not built or not computed to its end, or an empty text. */
  public String message(int member) {
    return member(member).message();
  }

  /** What was read of a member; empty if it was not computed to its end. */
  public Optional<T> reading(int member) {
    return Optional.ofNullable(member(member).reading());
  }

  /** Readings of the members that were computed to their end, in their order. */
  public List<T> completed() {
    List<T> readings = new ArrayList<>();
    for (int i = 0; i < members.size(); i++) {
      reading(i).ifPresent(readings::add);
    }
    return readings;
  }

  private Member<T> member(int member) {
    return members.get(Check.inRange("member", member, 0, members.size() - 1));
  }
}
