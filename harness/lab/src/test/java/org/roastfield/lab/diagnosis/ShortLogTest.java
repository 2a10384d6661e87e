package org.roastfield.lab.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.files.ChannelFormat;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.synthetic.ScenarioCut;

/** Logs that end early, or say hardly anything of the cut. */
class ShortLogTest {

  private final SpoiledLogs.Written good = SpoiledLogs.good(ScenarioCut.PORK_LOIN, 31);

  /** The same log with the first readings of the core alone. */
  private SpoiledLogs.Written core(int readings) {
    LogPackage of = good.log();
    List<LogChannel> channels = new ArrayList<>();
    for (LogChannel channel : of.readings().channels()) {
      if (!channel.name().equals(CookLog.CORE)) {
        channels.add(channel);
      } else if (readings > 0) {
        channels.add(channel.until(channel.time(readings - 1)));
      }
    }
    Set<String> names = channels.stream().map(LogChannel::name).collect(Collectors.toSet());
    List<ChannelFormat> formats =
        of.formats().stream().filter(format -> names.contains(format.channel())).toList();
    CookLog old = of.readings();
    CookLog log =
        new CookLog(old.fileName(), old.comments(), old.rows(), old.start(), old.end(), channels);
    return good.with(
        new LogPackage(
            of.facts(),
            formats,
            log,
            of.setting(),
            of.events(),
            of.spots(),
            of.checks(),
            of.afterwards(),
            of.cook(),
            of.source()));
  }

  private static List<String> notAsked(Asked asked) {
    return asked.words(Finding.Kind.NOT_TOLD).stream()
        .filter(words -> words.contains("neither was looked for"))
        .toList();
  }

  @Test
  void weightsWithoutACore_areEvidence_andWhatNobodyCanSeeIsSaid() {
    Asked asked = Asked.about(core(0));
    assertEquals(1, notAsked(asked).size(), asked::toString);
    assertTrue(asked.verdict().probabilityAsStated() > 0.5, asked::toString);
  }

  @Test
  void oneReading_hasNoCourse_twoHave() {
    assertEquals(1, notAsked(Asked.about(core(1))).size());
    assertEquals(0, notAsked(Asked.about(core(2))).size());
  }

  /** What comes after the part that is used is not held against it. */
  @Test
  void findingsEndWithTheSpan() {
    double end = good.log().readings().end();
    SpoiledLogs.Written late = SpoiledLogs.missing(good, 0.9, 0.3 * end, 7);
    assertEquals(1, missing(late, LogSpan.ALL));
    assertEquals(1, missing(late, LogSpan.until(end)));
    assertEquals(0, missing(late, LogSpan.until(0.25 * end)));
  }

  private static long missing(SpoiledLogs.Written log, LogSpan span) {
    return LogChecks.of(log.log(), span).stream()
        .filter(finding -> finding.words().contains("of the readings of channel core are missing"))
        .count();
  }
}
