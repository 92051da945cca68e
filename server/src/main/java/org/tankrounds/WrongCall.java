package org.tankrounds;

import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What was typed and cannot be meant, in one sentence. */
final class WrongCall {
    private WrongCall() {}

    static int tell(ParameterException e) {
        e.getCommandLine().getErr().println(sentence(e) + " (--help explains this command.)");
        return 2;
    }

    private static String sentence(ParameterException e) {
        String command = e.getCommandLine().getCommandSpec().qualifiedName();
        if (e instanceof UnmatchedArgumentException unmatched) {
            return command + unmatched(unmatched) + ".";
        }
        if (e instanceof MissingParameterException missing) {
            return command + " needs " + named(missing.getMissing()) + ".";
        }
        if (e instanceof OverwrittenOptionException twice) {
            return name(twice.getOverwritten()) + " is given twice.";
        }
        return e.getArgSpec() == null || e.getValue() == null
                ? e.getMessage() : badValue(e.getArgSpec(), e.getValue());
    }

    private static String unmatched(UnmatchedArgumentException e) {
        String word = e.getUnmatched().get(0);
        if (e.isUnknownOption()) {
            return " has no option " + word;
        }
        boolean hasCommands = !e.getCommandLine().getSubcommands().isEmpty();
        return (hasCommands ? " has no command \"" : " does not take \"") + word + "\"";
    }

    private static String named(List<ArgSpec> missing) {
        return missing.stream()
                .map(one -> one.isOption() ? name(one) + " " + one.paramLabel() : one.paramLabel())
                .collect(Collectors.joining(" and "));
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static String badValue(ArgSpec argument, String value) {
        String accepted = argument.arity().max() == 0 ? "it stands alone"
                : "a " + (argument.type() == double.class ? "" : "whole ") + "number is accepted";
        return name(argument) + " is \"" + value + "\"; " + accepted + ".";
    }
}
