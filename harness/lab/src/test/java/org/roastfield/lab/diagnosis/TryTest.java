package org.roastfield.lab.diagnosis;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.roastfield.core.inference.*;
import org.roastfield.core.simulation.*;
import org.roastfield.lab.cooker.*;
import org.roastfield.lab.files.*;
import org.roastfield.lab.synthetic.*;

class TryTest {
  static void go(String what, SpoiledLogs.Written w) {
    LoggedCase logged = LoggedCase.of(w.file(), w.log(), LogSpan.ALL, Optional.empty());
    CookerLogs logs = CookerLogs.of(List.of(logged), p -> true);
    Simulator simulator = Simulator.withDefaults();
    CookModel model = logs.model(simulator);
    Calibration cal = Calibration.of(Prior.of(logs.parameters()), model.evidence(), model);
    long t = System.nanoTime();
    MapEstimate map = cal.map();
    System.out.printf(
        "=== %s: %s map %.0f ms%n", what, map.status(), (System.nanoTime() - t) / 1e6);
    if (!map.isFound()) return;
    t = System.nanoTime();
    Verdict v =
        Inquiry.of(logs, List.of(new Source(w.log(), LogSpan.ALL, Optional.empty())), simulator)
            .into(cal, map);
    System.out.printf(
        "inquiry %.0f ms as stated %.3f conflict %s %.4f series %s%n",
        (System.nanoTime() - t) / 1e6,
        v.probabilityAsStated(),
        v.diagnosis().conflict(),
        v.diagnosis().conflict().chance(),
        v.diagnosis().series());
    for (var r : v.explanations().ranked()) {
      String par = "";
      for (Suspicion s : v.fitted())
        if (s.explanation().equals(r.explanation())) {
          int i = r.estimate().prior().parameters().index(s.id());
          par =
              String.format(
                  "t %.0f promise %.2f value %.4f",
                  s.time() / 60, s.promise(), r.estimate().value(i));
        }
      System.out.printf(
          Locale.ROOT,
          "  %-40s %.3f  %.2f %s conv %.3f %s%n",
          r.explanation().name(),
          r.probability(),
          r.logWeight(),
          par,
          r.estimate().isFound() ? r.estimate().value(0) : Double.NaN,
          r.estimate().isFound() ? r.estimate().errors(0) : "");
    }
    Prior pooled = v.pooled();
    System.out.printf(
        "  conv as stated %.3f +- %.3f pooled %.3f +- %.3f truth %s%n",
        map.mean()[0], map.spread(0), pooled.mean()[0], pooled.spread(0), w.made().values());
  }

  @Test
  void go() {
    for (long seed : new long[] {31, 32}) {
      for (ScenarioCut cut : List.of(ScenarioCut.PORK_LOIN, ScenarioCut.BISON_STRIP)) {
        SpoiledLogs.Written g = SpoiledLogs.good(cut, seed);
        double end = g.log().readings().end();
        go(cut + " thin", SpoiledLogs.statedSize(g, 1 / 1.2));
        go(cut + " thick", SpoiledLogs.statedSize(g, 1.2));
        go(cut + " probe 15 mm", SpoiledLogs.probeAt(g, 0.015, 0));
        go(cut + " probe 20 mm", SpoiledLogs.probeAt(g, 0.020, 0));
        go(cut + " slipped 15 mm at 40%", SpoiledLogs.probeAt(g, 0.015, 0.4 * end));
        go(cut + " lid 15 min at 30%", SpoiledLogs.lidOpen(g, 0.3 * end, 900));
        go(cut + " lid 25 min at 40%", SpoiledLogs.lidOpen(g, 0.4 * end, 1500));
        go(cut + " missing", SpoiledLogs.missing(g, 0.3, 5));
        SpoiledLogs.Written other = SpoiledLogs.good(ScenarioCut.TURKEY_BREAST, seed);
        go(cut + " log of turkey", g.with(other.log()));
        SpoiledLogs.Written beet = SpoiledLogs.good(ScenarioCut.BISON_STRIP, seed);
        if (cut != ScenarioCut.BISON_STRIP) go(cut + " log of bison", g.with(beet.log()));
      }
    }
  }
}
