package org.roastfield.core.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.ensemble.Cancellation;
import org.roastfield.core.ensemble.EnsembleReadings;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.ensemble.MemberStatus;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;

class OutcomeDistributionsTest {

  private static final Settings SETTINGS = Settings.withDefaults();
  private static final int MEMBERS = 21;
  private static final DonenessScale SCALE = DonenessScale.TRADE;
  private static final int MEDIUM = 4;

  private static Cook cook(double air) {
    Material meat = Material.constant("meat", 0.48, 1050, 3500);
    Convection pit = new Convection(18, Signal.constant(air));
    Convection room = new Convection(11, Signal.constant(295));
    return Cook.of(
        new Cut(Cylinder.ofDiameter(0.09), meat, 281),
        Stage.allRound("gentle", pit, StageEnd.after(7200)),
        Stage.allRound("rest", room, StageEnd.after(1800)));
  }

  /** Air from 360 to 400 K: the fourth could not be built. */
  private static Cook member(int i) {
    if (i == 3) {
      throw new IllegalArgumentException("no such cook");
    }
    return cook(360 + 2 * i);
  }

  private static CutOutcomes read(SimulationResult result) {
    return CutOutcomes.of(
        result, List.of(CutKind.INTACT, CutKind.GROUND), Optional.of(FirstOrder.MYOGLOBIN));
  }

  private static EnsembleReadings<CutOutcomes> run(int workers) {
    ExecutorService pool = Executors.newFixedThreadPool(workers);
    try {
      return EnsembleSimulator.with(SETTINGS)
          .read(
              MEMBERS,
              OutcomeDistributionsTest::member,
              OutcomeDistributionsTest::read,
              pool,
              workers,
              new Cancellation());
    } finally {
      pool.shutdown();
    }
  }

  @Test
  void distributions_areThoseOfTheMembersAlone() {
    EnsembleReadings<CutOutcomes> readings = run(2);
    assertEquals(MEMBERS, readings.size());
    assertEquals(MemberStatus.NOT_BUILT, readings.status(3));
    assertEquals("no such cook", readings.message(3));
    assertTrue(readings.reading(3).isEmpty());
    OutcomeDistributions all = OutcomeDistributions.of(readings.completed());
    assertEquals(MEMBERS - 1, all.size());
    // Hotter air gives a hotter core: the members are in order, so quantiles are known members.
    CutOutcomes tenth = read(Simulator.with(SETTINGS).run(member(11)).orElseThrow());
    double share = 10.0 / 19;
    assertEquals(tenth.lastCore(), all.lastCore().quantile(share), 1e-9);
    assertEquals(tenth.highestCore(), all.highestCore().quantile(share), 1e-9);
    Doneness doneness = tenth.doneness(SCALE, MEDIUM);
    assertEquals(doneness.upperRing(), all.ringBeyond(SCALE, MEDIUM).quantile(share), 1e-9);
    assertEquals(tenth.juice().total(), all.of(one -> one.juice().total()).quantile(share), 1e-9);
    assertEquals(tenth.browning().middle(), all.browning().quantile(share), 1e-9);
    assertEquals(tenth.tenderness().actin(), all.actin().quantile(share), 1e-9);
    assertTrue(all.loss().quantile(0.1) < all.loss().quantile(0.9));
    double sum = 0;
    for (int band = 0; band < SCALE.bands().size(); band++) {
      sum += mean(all, band);
    }
    assertEquals(1, sum, 1e-9);
  }

  private static double mean(OutcomeDistributions all, int band) {
    double sum = 0;
    for (int i = 0; i < all.size(); i++) {
      sum += all.share(SCALE, band).quantile(i / (all.size() - 1.0));
    }
    return sum / all.size();
  }

  @Test
  void chances_areSharesOfMembersThatMeet() {
    List<CutOutcomes> members = run(1).completed();
    OutcomeDistributions all = OutcomeDistributions.of(members);
    List<Safety> with =
        all.chances(read(Simulator.with(SETTINGS).run(cook(380)).orElseThrow()).safety());
    assertEquals(List.of(CutKind.INTACT, CutKind.GROUND), with.stream().map(Safety::kind).toList());
    Finding minimum = with.get(0).findings().get(0);
    long met = members.stream().filter(one -> one.safety().get(0).findings().get(0).met()).count();
    assertTrue(met > 0 && met < members.size(), "" + met);
    assertEquals((double) met / members.size(), minimum.chance().orElseThrow());
    assertTrue(
        with.get(1).findings().get(0).chance().orElseThrow() <= minimum.chance().orElseThrow());
  }

  @Test
  void workersAndOrder_changeNoBit() {
    List<CutOutcomes> one = run(1).completed();
    List<CutOutcomes> three = run(3).completed();
    for (int i = 0; i < one.size(); i++) {
      assertEquals(one.get(i).lastCore(), three.get(i).lastCore(), 0);
      assertEquals(one.get(i).safety(), three.get(i).safety());
      assertEquals(one.get(i).juice(), three.get(i).juice());
    }
  }

  @Test
  void cancelledRun_saysWhatWasNotRun() {
    Cancellation cancellation = new Cancellation();
    cancellation.cancel();
    EnsembleReadings<CutOutcomes> readings =
        EnsembleSimulator.with(SETTINGS)
            .read(
                3,
                OutcomeDistributionsTest::member,
                OutcomeDistributionsTest::read,
                Runnable::run,
                1,
                cancellation);
    assertEquals(MemberStatus.NOT_RUN, readings.status(2));
    assertThrows(
        IllegalArgumentException.class, () -> OutcomeDistributions.of(readings.completed()));
  }
}
