package yett.command;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.springframework.core.convert.support.ConfigurableConversionService;
import org.springframework.core.convert.support.GenericConversionService;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.ExitStatus;
import org.springframework.shell.core.command.adapter.MethodInvokerCommandAdapter;
import org.springframework.shell.core.command.annotation.Argument;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Option;
import org.springframework.shell.core.command.completion.CompletionProvider;
import org.springframework.shell.core.command.exit.ExitStatusExceptionMapper;
import yett.command.common.JsonErrors;
import yett.command.common.UsageException;

/**
 * A command given by a method with Spring Shell's annotations. Spring Shell's own reader needs an
 * application context, which would take most of the start-up time. This one reads the annotations
 * directly and creates the object when the command runs.
 */
final class AnnotatedCommand implements Command {
  private final Method method;
  private final org.springframework.shell.core.command.annotation.Command said;
  private final Supplier<?> subject;
  private final ExitStatusExceptionMapper failures;
  private final Function<String, CompletionProvider> completions;

  private AnnotatedCommand(
      Method method,
      Supplier<?> subject,
      ExitStatusExceptionMapper failures,
      Function<String, CompletionProvider> completions) {
    this.method = method;
    this.said =
        method.getAnnotation(org.springframework.shell.core.command.annotation.Command.class);
    this.subject = subject;
    this.failures = failures;
    this.completions = completions;
  }

  /**
   * Finds the commands of a class.
   *
   * @param subject creates the object with the commands
   * @param completions finds the completion of a command's words by the name in its annotation
   */
  static Stream<AnnotatedCommand> of(
      Class<?> type,
      Supplier<?> subject,
      ExitStatusExceptionMapper failures,
      Function<String, CompletionProvider> completions) {
    return Arrays.stream(type.getDeclaredMethods())
        .filter(
            m ->
                m.isAnnotationPresent(
                    org.springframework.shell.core.command.annotation.Command.class))
        .map(m -> new AnnotatedCommand(m, subject, failures, completions));
  }

  @Override
  public String getName() {
    return String.join(" ", said.name());
  }

  @Override
  public String getDescription() {
    return said.description();
  }

  @Override
  public String getHelp() {
    return said.help();
  }

  @Override
  public List<CommandOption> getOptions() {
    return Arrays.stream(method.getParameters())
        .filter(p -> p.isAnnotationPresent(Option.class))
        .map(p -> option(p.getAnnotation(Option.class), p.getType()))
        .toList();
  }

  private static CommandOption option(Option option, Class<?> type) {
    return CommandOption.with()
        .longName(option.longName())
        .description(option.description())
        .type(type)
        .build();
  }

  /** Whether the command takes words after its name, besides options. */
  boolean takesWords() {
    return Arrays.stream(method.getParameters())
        .anyMatch(
            p -> p.isAnnotationPresent(Arguments.class) || p.isAnnotationPresent(Argument.class));
  }

  /**
   * Reports a wrong command line in JSON, for other programs. Returns false if this command has no
   * such report; then it has to be reported as text.
   */
  boolean tells(UsageException wrong) {
    if (subject.get() instanceof JsonErrors json) {
      json.tell(wrong);
      return true;
    }
    return false;
  }

  @Override
  public CompletionProvider getCompletionProvider() {
    return completions.apply(said.completionProvider());
  }

  @Override
  public ExitStatus execute(CommandContext context) throws Exception {
    MethodInvokerCommandAdapter call =
        new MethodInvokerCommandAdapter(
            getName(),
            getDescription(),
            getGroup(),
            getHelp(),
            isHidden(),
            method,
            subject.get(),
            conversions(),
            new NoConstraints());
    call.setExitStatusExceptionMapper(failures);
    return call.execute(context);
  }

  /** Converts words and flags only; Spring's usual service has about sixty converters. */
  private static ConfigurableConversionService conversions() {
    GenericConversionService conversions = new GenericConversionService();
    conversions.addConverter(String.class, Boolean.class, Boolean::valueOf);
    return conversions;
  }
}
