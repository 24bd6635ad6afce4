package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.sitting.Progress;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** A command that is built alone is the same as among all others. */
class CommandsTest {

    private static CommandLine command(String name, CommandLine line) {
        return Objects.requireNonNull(line.getSubcommands().get(name), name);
    }

    private static CommandLine built(String... words) {
        PrintWriter nowhere = new PrintWriter(new StringWriter());
        return Commands.of(
                new Bench(Clock::systemUTC, Path.of(".")), new Terminal(nowhere, nowhere, Progress.SILENT), words);
    }

    static Set<String> names() {
        return built().getSubcommands().keySet();
    }

    @ParameterizedTest
    @MethodSource("names")
    void aNamedCommandExplainsItselfAsAmongAllOthers(String name) {
        CommandLine among = command(name, built());
        CommandLine alone = command(name, built(name));

        assertThat(alone.getUsageMessage()).isEqualTo(among.getUsageMessage()).contains("tapwright " + name);
        assertThat(alone.getCommandSpec().version())
                .isEqualTo(among.getCommandSpec().version());
        assertThat(alone.getCommandName()).isEqualTo(name);
    }

    @Test
    void aNamedCommandIsTheOnlyOneBuilt() {
        assertThat(built("taps", "a.wav").getSubcommands()).containsOnlyKeys("taps");
    }

    @ParameterizedTest
    @ValueSource(strings = {"help", "--help", "tap", ""})
    void helpAndAWrongNameKnowAllCommands(String word) {
        assertThat(built(word).getSubcommands().keySet()).isEqualTo(names()).hasSizeGreaterThan(20);
    }
}
