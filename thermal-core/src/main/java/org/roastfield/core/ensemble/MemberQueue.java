package org.roastfield.core.ensemble;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.integration.CookVariation;
import org.roastfield.core.integration.LaneMembers;

/** Hands out members, each once, to whichever worker asks. */
class MemberQueue implements LaneMembers {

  private final AtomicInteger next = new AtomicInteger();
  final Map<Integer, String> notBuilt = new ConcurrentHashMap<>();
  private final int members;
  private final int stages;
  private final IntFunction<Cook> cook;
  private final Cancellation cancellation;

  MemberQueue(int members, int stages, IntFunction<Cook> cook, Cancellation cancellation) {
    this.members = members;
    this.stages = stages;
    this.cook = cook;
    this.cancellation = cancellation;
  }

  @Override
  public int next() {
    if (cancellation.isCancelled()) {
      return -1;
    }
    int member = next.getAndIncrement();
    return member < members ? member : -1;
  }

  @Override
  public Cook cook(int member) {
    Cook built = cook.apply(member);
    if (built.stages().size() > stages) {
      throw new IllegalArgumentException(
          "a member may have as many stages as the template, "
              + stages
              + ", but member "
              + member
              + " has "
              + built.stages().size());
    }
    return built;
  }

  @Override
  public List<CookVariation> variations(int member, Cook built) {
    throw new IllegalStateException("members of this ensemble have no parameters");
  }

  @Override
  public void notBuilt(int member, RuntimeException cause) {
    notBuilt.put(member, String.valueOf(cause.getMessage()));
  }

  @Override
  public boolean isCancelled() {
    return cancellation.isCancelled();
  }
}
