package org.roastfield.core.ensemble;

import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.integration.MemberRecord;
import org.roastfield.core.integration.Standing;

/** Members that go on from where others stood, and that others may go on from. */
final class GoingOnQueue extends MemberQueue {

  private final IntFunction<@Nullable Standing> from;

  /** Where each ended; null for those that did not, and if nobody will ask. */
  final @Nullable Standing[] ends;

  /**
   * @param from where a member may go on from, or null
   * @param kept whether to keep where members end
   */
  GoingOnQueue(
      int members,
      int stages,
      IntFunction<Cook> cook,
      IntFunction<@Nullable Standing> from,
      boolean kept) {
    super(members, stages, cook, new Cancellation());
    this.from = from;
    this.ends = new @Nullable Standing[kept ? members : 0];
  }

  @Override
  public @Nullable Standing standing(int member) {
    return from.apply(member);
  }

  @Override
  public void ended(int member, CookIntegration at, MemberRecord record) {
    if (ends.length > 0) {
      ends[member] = at.standing(record, member);
    }
  }
}
