package org.roastfield.lab.command;

import org.roastfield.lab.result.Version;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;

/** The command above all others. */
@Command(
    name = "roastfield",
    description = "Computes what happens inside a thick cut cooked over live fire.",
    mixinStandardHelpOptions = true,
    versionProvider = RoastfieldCommand.VersionText.class,
    subcommands = {
      PlanCommand.class,
      SimulateCommand.class,
      SaltCommand.class,
      ReplayCommand.class,
      FitCommand.class,
      MakeLogCommand.class,
      MakeDataCommand.class,
      TakeInCommand.class,
      CalibrateCommand.class,
      StudyCommand.class,
      MakePosteriorsCommand.class,
      ScoreCommand.class,
      TryPlanCommand.class,
      PitCommand.class
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:the computation failed; the message says what to try",
      "2:bad usage or input; the message says where"
    })
final class RoastfieldCommand {

  RoastfieldCommand() {}

  /** Version line. */
  static final class VersionText implements IVersionProvider {

    @Override
    public String[] getVersion() {
      return new String[] {"roastfield " + Version.text()};
    }
  }
}
