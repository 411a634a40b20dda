package yett.trial;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.json.JsonMapper;
import yett.files.BoundedFile;
import yett.files.WholeFile;
import yett.knowledge.KnowledgeException;
import yett.knowledge.Problem;
import yett.trial.Account.Key;

/**
 * The run that the trainer accepted last, in a file next to the cards. It has one line for each
 * case, in the order of the files, so that version control shows which cases a change affected.
 */
public final class AcceptedRun {
  /** Name of the file in the folder of the rule base. */
  public static final String FILE = "accepted-run.jsonl";

  /** In bytes; some hundred thousand cases. */
  private static final int LARGEST = 64 << 20;

  /** Writes and reads a case as one line. */
  static final JsonMapper MAPPER =
      JsonMapper.builder()
          .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
          .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
          .changeDefaultPropertyInclusion(i -> i.withValueInclusion(JsonInclude.Include.NON_EMPTY))
          .build();

  private final Map<Key, Account> accounts;

  private AcceptedRun(Map<Key, Account> accounts) {
    this.accounts = accounts;
  }

  /**
   * The accepted run of a folder; empty if nothing was ever accepted there.
   *
   * @throws KnowledgeException if the file is damaged
   */
  public static Optional<AcceptedRun> in(Path folder) {
    Path file = folder.resolve(FILE);
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    Map<Key, Account> accounts = new LinkedHashMap<>();
    int number = 0;
    try {
      for (String line : BoundedFile.text(file, LARGEST).lines().toList()) {
        number++;
        Account account = MAPPER.readValue(line, Account.class);
        accounts.put(account.key(), account);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    } catch (JacksonException e) {
      throw damaged(file, number);
    }
    return Optional.of(new AcceptedRun(accounts));
  }

  private static KnowledgeException damaged(Path file, int line) {
    return new KnowledgeException(
        List.of(
            new Problem(
                "damaged-run",
                file.toString(),
                line,
                1,
                "this line is no case of an accepted run",
                "Take the file from version control again, or delete it and accept anew.")));
  }

  Optional<Account> of(Key key) {
    return Optional.ofNullable(accounts.get(key));
  }

  Set<Key> keys() {
    return accounts.keySet();
  }

  Map<Key, Set<String>> inView() {
    return accounts.entrySet().stream()
        .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().inView()));
  }

  /**
   * Writes the run that is accepted now, whole or not at all.
   *
   * @param before accounts to keep, of cases that were not run
   */
  static void write(Path folder, Collection<Account> before, Collection<Account> run)
      throws IOException {
    Map<String, Account> all = new TreeMap<>();
    before.forEach(a -> all.put(order(a), a));
    run.forEach(a -> all.put(order(a), a));
    StringBuilder lines = new StringBuilder();
    all.values().forEach(a -> lines.append(MAPPER.writeValueAsString(a)).append('\n'));
    WholeFile.replace(folder.resolve(FILE), lines.toString());
  }

  Collection<Account> accounts() {
    return accounts.values();
  }

  private static String order(Account account) {
    return account.file() + "\0" + account.name();
  }
}
