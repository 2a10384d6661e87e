package org.roastfield.lab.cooker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.chamber.Lid;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.inference.ChamberEstimate;
import org.roastfield.core.inference.ChamberTrace;
import org.roastfield.core.inference.Conflict;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.ProfileRatio;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.plan.SearPlanner;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Signal;
import org.roastfield.lab.plan.CookerBelief;
import org.roastfield.lab.synthetic.MadeCook;
import org.roastfield.lab.synthetic.ScenarioCut;

/** What the air of a cooker does by itself: from logs to a profile and on to a plan. */
class HabitTest {

  private static final MadeCook MADE =
      CookerFixtures.made(ScenarioCut.PORK_LOIN, CookerFixtures.PIT, 51);

  private static CookerSearch search(Optional<CookerProfile> before) {
    return new CookerSearch(
        before,
        one ->
            one.id().equals("convection")
                || one.id().equals("size")
                || FireParameters.ofHabit().has(one.id()),
        Simulator.withDefaults(),
        progress -> {},
        () -> {});
  }

  private static CookerProfile learned(LoggedCase log) {
    CookerSearch search = search(Optional.empty());
    CookerSearch.Found found = search.find(List.of(log), 1, false, 1);
    return search.profile("pit", found, found.belief(), List.of("0".repeat(64)), "as-stated", true);
  }

  /** A profile whose air drifts otherwise, and is known well. */
  private static CookerProfile with(CookerProfile like, double deviation) {
    ParameterSet parameters = like.parameters();
    int drift = parameters.index(FireParameters.DRIFT.id());
    double[] mean = like.belief().mean();
    double[][] covariance = new double[mean.length][mean.length];
    for (int p = 0; p < mean.length; p++) {
      double spread = 0.1 * parameters.get(p).spread();
      covariance[p][p] = spread * spread;
    }
    mean[drift] = StrictMath.log(deviation);
    return new CookerProfile(
        like.id(),
        like.model(),
        like.madeUp(),
        like.complete(),
        parameters,
        Prior.of(parameters, mean, covariance),
        like.validity(),
        like.errors(),
        like.diagnosis(),
        like.logs());
  }

  @Test
  void logOfAChamber_makesAProfileThatKnows_andReadsBack() {
    LoggedCase log = CookerFixtures.logged(MADE);
    assertTrue(log.chamber().isPresent());
    assertTrue(
        log.assumptions().stream().anyMatch(words -> words.startsWith("drift of the air: from")),
        log.assumptions()::toString);
    CookerProfile profile = learned(log);
    Prior habit = profile.habit().orElseThrow();
    assertTrue(habit.spread(0) < 0.95 * FireParameters.DRIFT.spread());
    String text = CookerProfileJson.text(profile, "0.1.0");
    CookerProfile read = SampleProfiles.read("pit", text);
    assertEquals(habit.mean()[1], read.habit().orElseThrow().mean()[1], 0);
  }

  @Test
  void profileOfACalmCooker_isInConflictWithAWildOnesLog() {
    LoggedCase log = CookerFixtures.logged(MADE);
    CookerProfile own = learned(log);
    Conflict known = search(Optional.of(own)).habitConflict(List.of(log));
    Conflict calm = search(Optional.of(with(own, 1.2))).habitConflict(List.of(log));
    assertTrue(known.chance() > 0.01, known::toString);
    assertTrue(calm.chance() < 0.01, calm::toString);
    assertEquals(Conflict.NONE, search(Optional.empty()).habitConflict(List.of(log)));
    double ownRatio = search(Optional.of(own)).habitRatio(List.of(log));
    double calmRatio = search(Optional.of(with(own, 1.2))).habitRatio(List.of(log));
    assertTrue(
        ownRatio > 0 && calmRatio < -StrictMath.log(ProfileRatio.TIMES),
        ownRatio + " " + calmRatio);
    assertEquals(0, search(Optional.empty()).habitRatio(List.of(log)), 0);
  }

  /** What the profile knows and what cooks add; a plan without one stays with a fire by hand. */
  @Test
  void planWithAProfile_drawsItsDrift() {
    CookerProfile calm = with(learned(CookerFixtures.logged(MADE)), 2);
    VariedCook cook = VariedCook.planned(CookerFixtures.file(MADE), Probe.CORE);
    Prior prior = CookerBelief.of(calm, cook).prior();
    int drift = prior.parameters().index(FireParameters.DRIFT.id());
    assertEquals(StrictMath.log(2), prior.mean()[drift], 1e-12);
    assertEquals(Math.hypot(0.03, 0.15), prior.spread(drift), 1e-12);
    assertTrue(!CookerBelief.population(cook).prior().parameters().has(FireParameters.DRIFT.id()));
    SplittableRandom random = new SplittableRandom(8);
    double squares = 0;
    int draws = 2000;
    for (int i = 0; i < draws; i++) {
      ParameterPoint point = prior.parameters().point(prior.draw(random));
      point = point.moved(point.index("openings"), -1);
      double away = StrayingAir.rough(383, point, i).at(0) - 383;
      squares += away * away / draws;
    }
    assertEquals(2 * Math.exp(0.153 * 0.153), Math.sqrt(squares), 0.15);
  }

  /** An opening takes what the profile says: so much deeper, and back so much later. */
  @Test
  void openLid_takesWhatTheCookerLoses() {
    Prior weather = Prior.of(StrayingAir.parameters());
    ParameterPoint usual = SearPlanner.middle(weather);
    usual = usual.moved(usual.index("openings"), 0);
    ParameterPoint deep =
        usual.with(FireParameters.LID_DEPTH.id(), 1.2).with(FireParameters.LID_RECOVERY.id(), 1.5);
    double ratio = lost(deep) / lost(usual);
    assertEquals(1.2 * (1 + 1.5) / 2, ratio, 0.02);
  }

  /**
   * Four cooks on each of twenty cookers whose air does as plans have it: what is learned of the
   * numbers is nobody's middle but theirs, to about 0.15 of what cookers differ by. While nobody
   * notes openings they count as drift, which is then too wild and too fast.
   */
  @Test
  void airOfTruths_isLearnedAsItIs_ifItsOpeningsAreNoted() {
    double[] noted = learnedBesideTheTruth(true);
    for (double off : noted) {
      assertEquals(0, off, 0.3, Arrays.toString(noted));
    }
    double[] unnoted = learnedBesideTheTruth(false);
    assertTrue(unnoted[0] > 1 && unnoted[1] < -1, Arrays.toString(unnoted));
  }

  /** Mean over cookers of what is believed less the truth, over what cookers differ by. */
  private static double[] learnedBesideTheTruth(boolean noted) {
    Prior habit = Prior.of(FireParameters.ofHabit());
    Prior weather = Prior.of(StrayingAir.parameters());
    SplittableRandom random = new SplittableRandom(12);
    int cookers = 20;
    double[] off = new double[habit.size()];
    for (int cooker = 0; cooker < cookers; cooker++) {
      List<ChamberTrace> traces = new ArrayList<>();
      for (int cook = 0; cook < 4; cook++) {
        ParameterPoint point = weather.parameters().point(weather.draw(random));
        traces.add(shown(point, random.nextLong(), noted));
      }
      Prior learned = ChamberEstimate.cooker(habit, traces);
      for (int p = 0; p < off.length; p++) {
        off[p] += (learned.mean()[p] - habit.mean()[p]) / habit.spread(p) / cookers;
      }
    }
    return off;
  }

  /**
   * Two and a half hours of a probe that is read every two minutes, its air as a fire's by hand.
   */
  private static ChamberTrace shown(ParameterPoint point, long seed, boolean noted) {
    Signal air = StrayingAir.rough(383, point, seed);
    SplittableRandom random = new SplittableRandom(seed);
    double[] times = new double[75];
    double[] values = new double[times.length];
    for (int i = 0; i < times.length; i++) {
      times[i] = 120 * i;
      values[i] = air.at(times[i]) + 0.3 * random.nextGaussian();
    }
    List<Lid.Opening> openings = noted ? StrayingAir.openings(point) : List.of();
    Optional<Lid> lid = openings.isEmpty() ? Optional.empty() : Optional.of(new Lid(openings));
    return ChamberTrace.of(times, values, 383, new double[0], lid);
  }

  private static double lost(ParameterPoint point) {
    Signal open = StrayingAir.rough(383, point, 1);
    Signal shut = StrayingAir.rough(383, point.moved(point.index("openings"), -1), 1);
    double lost = 0;
    for (double time = 0.5; time < 9000; time++) {
      lost += shut.at(time) - open.at(time);
    }
    return lost;
  }
}
