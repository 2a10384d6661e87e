package org.roastfield.core.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.roastfield.core.ensemble.Distribution;
import org.roastfield.core.internal.Check;

/**
 * Outcomes over the members of an ensemble, as {@link
 * org.roastfield.core.ensemble.EnsembleSimulator#read} gives them with {@link CutOutcomes#of} as
 * the reading. Immutable.
 */
public final class OutcomeDistributions {

  private final List<CutOutcomes> members;

  private OutcomeDistributions(List<CutOutcomes> members) {
    this.members = List.copyOf(members);
  }

  /**
   * Over members that were computed.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static OutcomeDistributions of(List<CutOutcomes> members) {
    Check.inRange("number of members", members.size(), 1, Integer.MAX_VALUE);
    return new OutcomeDistributions(members);
  }

  /** Number of members. */
  public int size() {
    return members.size();
  }

  /** Of any number. */
  public Distribution of(ToDoubleFunction<CutOutcomes> number) {
    return Distribution.of(members.stream().mapToDouble(number).toArray());
  }

  /** Of the core at the end of the cook [K]. */
  public Distribution lastCore() {
    return of(CutOutcomes::lastCore);
  }

  /** Of the highest core [K]. */
  public Distribution highestCore() {
    return of(CutOutcomes::highestCore);
  }

  /** Of the share of the volume in a band of a scale. */
  public Distribution share(DonenessScale scale, int band) {
    return of(member -> member.doneness(scale, band).shares().get(band));
  }

  /** Of the ring below the surface, or upper face, beyond a band of a scale [m]. */
  public Distribution ringBeyond(DonenessScale scale, int band) {
    return of(member -> member.doneness(scale, band).upperRing());
  }

  /** Of the water lost, evaporated and pressed out, as a share of the raw mass. */
  public Distribution loss() {
    return of(member -> member.juice().total());
  }

  /** Of the middle browning index. */
  public Distribution browning() {
    return of(member -> member.browning().middle());
  }

  /** Of the mean share of actin that has hardened. */
  public Distribution actin() {
    return of(member -> member.tenderness().actin());
  }

  /**
   * Findings of one computation with the share of the members that meet each. A member that shows
   * no finding of a name, such as a fall that it was not computed to, does not meet it.
   *
   * @param one findings for as many kinds of cut as the members have
   */
  public List<Safety> chances(List<Safety> one) {
    List<Safety> with = new ArrayList<>();
    for (int i = 0; i < one.size(); i++) {
      int kind = i;
      List<Safety> all = members.stream().map(member -> member.safety().get(kind)).toList();
      with.add(one.get(i).withChances(all));
    }
    return with;
  }
}
