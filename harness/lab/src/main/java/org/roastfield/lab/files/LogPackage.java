package org.roastfield.lab.files;

import java.util.List;
import java.util.Optional;

/**
 * A logged cook with everything that was written down about it.
 *
 * @param facts where it comes from
 * @param formats how each channel is written, in the order of the channels
 * @param readings of the probes
 * @param setting of a chamber without a probe, if stated
 * @param events in order of time
 * @param spots in order of time
 * @param checks of the probes
 * @param afterwards what was found when it was over, if anything
 * @param cook text of the cook file, if there is one; its own reader says whether it is right
 * @param source text of SOURCE.md: who, when, licence, instruments, what was changed
 */
public record LogPackage(
    LogFacts facts,
    List<ChannelFormat> formats,
    CookLog readings,
    Optional<ChamberSetting> setting,
    List<LogEvent> events,
    List<Spot> spots,
    List<ProbeCheck> checks,
    Optional<Afterwards> afterwards,
    Optional<String> cook,
    String source) {

  /** Checks that formats and channels are the same, and copies the lists. */
  public LogPackage {
    formats = List.copyOf(formats);
    events = List.copyOf(events);
    spots = List.copyOf(spots);
    checks = List.copyOf(checks);
    List<String> written = formats.stream().map(ChannelFormat::channel).toList();
    List<String> logged = readings.channels().stream().map(LogChannel::name).toList();
    if (!written.equals(logged)) {
      throw new IllegalArgumentException(
          "formats must name the channels " + logged + ", were of " + written);
    }
  }

  /** Prior of a probe's bias from its checks, if there are any. */
  public Optional<BiasPrior> biasPrior(String probe) {
    return BiasPrior.of(probe, checks);
  }
}
