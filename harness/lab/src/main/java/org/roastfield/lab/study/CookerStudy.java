package org.roastfield.lab.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import java.util.random.RandomGenerator;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.inference.ChamberEstimate;
import org.roastfield.core.inference.ChamberTrace;
import org.roastfield.core.inference.Conflict;
import org.roastfield.core.inference.CookerPopulation;
import org.roastfield.core.inference.Diagnosis;
import org.roastfield.core.inference.FirstOrder;
import org.roastfield.core.inference.LogSite;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.ProfileRatio;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.lab.cooker.OtherCookers;
import org.roastfield.lab.score.ForecastCase;
import org.roastfield.lab.score.PairedScores;
import org.roastfield.lab.score.Predictive;
import org.roastfield.lab.score.ScoreSummary;
import org.roastfield.lab.synthetic.Noise;

/** Whether profiles of cookers hold what is true, help the next cook, and are missed when wrong. */
final class CookerStudy implements Study {

  private static final int LOGS = 5;
  private static final double EARLY = 0.25;
  private static final double HALF = 0.5;

  /** Generators of what cookers' air does by itself begin here. */
  private static final int AIRS = 30_000;

  @Override
  public String name() {
    return "cookers";
  }

  @Override
  public String question() {
    return "Do profiles of five logs hold the truth, help a sixth cook, and stand out if wrong?";
  }

  @Override
  public int cases(Size size) {
    return size == Size.FULL ? 40 : 8;
  }

  /** A cooker: what its logs say, and the cook that was kept aside, with its truth. */
  private record Made(
      List<LogSite> logs, Prior profile, List<Double> habit, Prior air, StudyLog aside) {

    /** The cooker's coordinate. */
    double truth(int parameter) {
      return aside.truth()[parameter];
    }
  }

  @Override
  public Findings run(int cases, long seed, IntConsumer done) {
    CookerPopulation population = Truths.population();
    List<Made> cookers = new ArrayList<>();
    Tally[] covered = new Tally[StudyCook.OF_COOKER];
    Tally all = new Tally();
    ParameterSet habit = FireParameters.ofHabit();
    Tally[] ofAir = new Tally[habit.size()];
    Arrays.setAll(ofAir, p -> new Tally());
    for (int p = 0; p < covered.length; p++) {
      covered[p] = new Tally();
    }
    for (int g = 0; g < cases; g++) {
      Made made = made(population, seed, g);
      cookers.add(made);
      for (int p = 0; p < covered.length; p++) {
        double error = made.profile.mean()[p] - made.truth(p);
        double held = Math.abs(error) <= Recovered.NINETY * made.profile.spread(p) ? 1 : 0;
        covered[p].add(held);
        all.add(held);
      }
      for (int p = 0; p < ofAir.length; p++) {
        double error = made.air.mean()[p] - made.habit.get(p);
        double held = Math.abs(error) <= Recovered.NINETY * made.air.spread(p) ? 1 : 0;
        ofAir[p].add(held);
        all.add(held);
      }
      done.accept(g + 1);
    }
    List<Bar> bars = new ArrayList<>();
    for (int p = 0; p < covered.length; p++) {
      bars.add(
          Bar.of(
              StudyCook.IDS.get(p) + " of cookers: coverage of 90 %",
              covered[p].mean(),
              0.82,
              0.98));
    }
    for (int p = 0; p < ofAir.length; p++) {
      String what = habit.get(p).id() + " of cookers: coverage of 90 %";
      bars.add(Bar.of(what, ofAir[p].mean(), 0.82, 0.98));
    }
    bars.add(Bar.of("effects of cookers: coverage of 90 %", all.mean(), 0.82, 0.98));
    List<String> remarks = new ArrayList<>();
    forecasts(cookers, seed, bars, remarks);
    flags(cookers, bars, remarks);
    remarks.add(learned(population, cookers));
    return new Findings(bars, remarks);
  }

  private static Made made(CookerPopulation population, long seed, int cooker) {
    RandomGenerator random = Truths.random(seed, cooker);
    Noise noise = Truths.noise(seed, cooker);
    double[] truth = Truths.PRIOR.draw(random);
    double[] habit = Truths.HABIT.draw(Truths.random(seed, AIRS + cooker));
    List<LogSite> logs = new ArrayList<>();
    List<ChamberTrace> chambers = new ArrayList<>();
    for (int c = 0; c < LOGS; c++) {
      StudyLog log = log(truth, habit, random, noise);
      chambers.add(log.chamber(log.end()));
      MapEstimate estimate = log.fitted(Truths.PRIOR, log.end()).estimate();
      logs.add(LogSite.of(estimate, Truths.OF_COOKER));
    }
    StudyLog aside = log(truth, habit, random, noise);
    Prior air = ChamberEstimate.cooker(Truths.HABIT, chambers);
    List<Double> own = Arrays.stream(habit).boxed().toList();
    return new Made(logs, population.cooker(logs), own, air, aside);
  }

  private static StudyLog log(
      double[] cooker, double[] habit, RandomGenerator random, Noise noise) {
    double[] truth = Truths.nextCook(cooker, random);
    return StudyLog.of(truth, StudyAir.of(Truths.habitOfCook(habit, noise), noise), noise);
  }

  /** Time to the target of the cooks kept aside, at a quarter: with the profile and without. */
  private static void forecasts(
      List<Made> cookers, long seed, List<Bar> bars, List<String> remarks) {
    List<ForecastCase> with = new ArrayList<>();
    List<ForecastCase> without = new ArrayList<>();
    for (int g = 0; g < cookers.size(); g++) {
      Made made = cookers.get(g);
      RandomGenerator random = Truths.random(seed, 10_000 + g);
      with.add(early("cooker " + g, made.aside, Truths.onCooker(made.profile), random));
      without.add(early("cooker " + g, made.aside, Truths.PRIOR, random));
    }
    RandomGenerator ties = Truths.random(seed, 20_000);
    ScoreSummary known = ScoreSummary.of(with, ties);
    ScoreSummary unknown = ScoreSummary.of(without, ties);
    bars.add(
        Bar.of(
            "time to target at a quarter of the cook: CRPS with profile / without",
            known.crps() / unknown.crps(),
            0,
            0.9));
    PairedScores paired = PairedScores.ofCrps(known, unknown);
    remarks.add(
        String.format(
            Locale.ROOT,
            "at a quarter of the cook: CRPS %.1f min with profile, %.1f min without, %d cooks;"
                + " coverage of 90 %% %.2f and %.2f; better by %.1f min",
            known.crps() / 60,
            unknown.crps() / 60,
            known.cooks(),
            known.coverage(0.9).share(),
            unknown.coverage(0.9).share(),
            -paired.difference() / 60));
  }

  private static ForecastCase early(
      String name, StudyLog log, Prior prior, RandomGenerator random) {
    double time = log.timeToTarget();
    MapEstimate estimate = log.fitted(prior, EARLY * time).estimate();
    Forecast forecast = Forecast.of(estimate.asPrior(), log, random);
    return new ForecastCase(name, forecast.timeToTarget(), time);
  }

  /** At half time: the cooker's own profile, and that of the next cooker. */
  private static void flags(List<Made> cookers, List<Bar> bars, List<String> remarks) {
    Tally right = new Tally();
    Tally byCore = new Tally();
    Tally byAir = new Tally();
    Tally wrong = new Tally();
    Tally rightByConflict = new Tally();
    Tally wrongByConflict = new Tally();
    Tally near = new Tally();
    Tally far = new Tally();
    double[] apart = new double[cookers.size()];
    for (int g = 0; g < apart.length; g++) {
      apart[g] = apart(cookers.get(g), cookers.get((g + 1) % apart.length));
    }
    double middle = Predictive.ofDraws(apart).median();
    for (int g = 0; g < apart.length; g++) {
      Made made = cookers.get(g);
      Made other = cookers.get((g + 1) % apart.length);
      MapEstimate without = half(made.aside, Truths.PRIOR).estimate();
      Seen own = seen(made.aside, made, without);
      Seen another = seen(made.aside, other, without);
      double flag = flagged(another.ratio);
      right.add(flagged(own.ratio));
      wrong.add(flag);
      byCore.add(flagged(new ProfileRatio(another.ratio.cores(), 0)));
      byAir.add(flagged(new ProfileRatio(0, another.ratio.chambers())));
      rightByConflict.add(own.conflict.chance() < Diagnosis.LEAST_CHANCE ? 1 : 0);
      wrongByConflict.add(another.conflict.chance() < Diagnosis.LEAST_CHANCE ? 1 : 0);
      (apart[g] > middle ? far : near).add(flag);
    }
    bars.add(Bar.of("own profile flagged by half time", right.mean(), 0, 0.05));
    bars.add(Bar.of("another cooker's profile flagged by half time", wrong.mean(), 0.5, 1));
    remarks.add(
        String.format(
            Locale.ROOT,
            "flagged of the cookers that are farther apart than %.1f spreads %.2f, of the others"
                + " %.2f",
            middle,
            far.mean(),
            near.mean()));
    remarks.add(
        String.format(
            Locale.ROOT,
            "another cooker's profile flagged by the core alone %.2f, by the chamber alone %.2f",
            byCore.mean(),
            byAir.mean()));
    remarks.add(
        String.format(
            Locale.ROOT,
            "by the chi-square of the cooker's numbers, p < 0.01, flagged of the own profiles %.3f,"
                + " of another cooker's %.3f",
            rightByConflict.mean(),
            wrongByConflict.mean()));
  }

  /** How far two cookers are from each other, in spreads over cookers. */
  private static double apart(Made one, Made other) {
    double squares = 0;
    for (int p = 0; p < StudyCook.OF_COOKER; p++) {
      double far = (one.truth(p) - other.truth(p)) / Truths.PRIOR.spread(p);
      squares += far * far;
    }
    return Math.sqrt(squares);
  }

  private static double flagged(ProfileRatio ratio) {
    return ratio.isAnother() ? 1 : 0;
  }

  /** What half of a log says of a cooker's profile, as an inquiry asks it. */
  private record Seen(ProfileRatio ratio, Conflict conflict) {}

  private static Seen seen(StudyLog log, Made cooker, MapEstimate without) {
    List<ChamberTrace> chamber = List.of(log.chamber(HALF * log.timeToTarget()));
    StudyLog.Fit fit = half(log, Truths.onCooker(cooker.profile));
    FirstOrder around = FirstOrder.of(fit.calibration(), fit.estimate());
    return new Seen(
        ProfileRatio.of(fit.estimate(), without, ChamberEstimate.logRatio(cooker.air, chamber)),
        Diagnosis.of(around).with(ChamberEstimate.conflict(cooker.air, chamber)).ofCooker());
  }

  private static StudyLog.Fit half(StudyLog log, Prior prior) {
    return log.fitted(prior, HALF * log.timeToTarget());
  }

  private static String learned(CookerPopulation population, List<Made> cookers) {
    CookerPopulation learned =
        population.learned(cookers.stream().map(Made::logs).toList(), OtherCookers.WEIGHT);
    StringBuilder text = new StringBuilder("spread over cookers learned (assumed):");
    for (int p = 0; p < StudyCook.OF_COOKER; p++) {
      text.append(
          String.format(
              Locale.ROOT,
              " %s %.2f (%.2f)",
              StudyCook.IDS.get(p),
              Math.sqrt(learned.betweenCookers()[p][p]),
              Math.sqrt(population.betweenCookers()[p][p])));
    }
    return text.toString();
  }
}
