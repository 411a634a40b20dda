package yett.knowledge;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Reads the files of a rule base into cards and collects every problem. */
final class RuleBaseReader {
  private static final List<String> KINDS =
      List.of(
          "cause",
          "effect",
          "check",
          "complaint",
          "proof",
          "history",
          "repair",
          "set-up",
          "caution",
          "stop",
          "site",
          "planning",
          "synonyms",
          "pressing");

  /** Most cards of a rule base with its add-ons; the shipped one has an eighth of it. */
  private static final int MOST_CARDS = 5_000;

  /** Most problems that are collected; nobody reads more. */
  static final int MOST_PROBLEMS = 1_000;

  private final SortedMap<String, String> files;
  private final String language;
  private final BiFunction<String, String, ParsedFile> parser;
  private final List<String> unreadable = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final Places places = new Places();
  private final Map<String, Cause> causes = new LinkedHashMap<>();
  private final Map<String, Effect> effects = new LinkedHashMap<>();
  private final Map<String, Check> checks = new LinkedHashMap<>();
  private final Map<String, History> histories = new LinkedHashMap<>();
  private final Map<String, Repair> repairs = new LinkedHashMap<>();
  private final Map<String, SetUp> setUps = new LinkedHashMap<>();
  private final Map<String, Caution> cautions = new LinkedHashMap<>();
  private final Map<String, Stop> stops = new LinkedHashMap<>();
  private final Map<String, SiteQuestion> siteQuestions = new LinkedHashMap<>();
  private final Map<String, Planning> plannings = new LinkedHashMap<>();
  private final Map<String, MainsPart> mainsParts = new LinkedHashMap<>();
  private final TelephoneReader telephone = new TelephoneReader();

  /**
   * @param language of the texts; empty for the cards' own
   */
  RuleBaseReader(SortedMap<String, String> files, String language) {
    this(files, language, ParsedFile::of);
  }

  /**
   * @param parser parses a file, given its name and text
   */
  RuleBaseReader(
      SortedMap<String, String> files,
      String language,
      BiFunction<String, String, ParsedFile> parser) {
    this.files = files;
    this.language = language;
    this.parser = parser;
  }

  RuleBase read() {
    RuleBase base = readAsFarAsPossible();
    if (!problems.isEmpty()) {
      throw new KnowledgeException(problems);
    }
    return base;
  }

  /** Every problem found, once the rule base has been read. */
  List<Problem> problems() {
    return problems;
  }

  /** Whether every card could be parsed. */
  boolean wasReadable() {
    return unreadable.isEmpty();
  }

  /** Reads as much as possible; errors are collected as problems. */
  RuleBase readAsFarAsPossible() {
    SortedMap<String, String> rules = new TreeMap<>();
    SortedMap<String, String> tables = new TreeMap<>();
    List<CardFile.Document> documents = new ArrayList<>();
    List<CardFile.Document> translated = new ArrayList<>();
    for (Map.Entry<String, String> file : files.entrySet()) {
      String name = file.getKey();
      if (name.endsWith(".drl")) {
        rules.put(name, file.getValue());
      } else if (KnowledgeSource.table(name)) {
        tables.put(name, file.getValue());
      } else if (holdsCards(name)) {
        ParsedFile parsed = parser.apply(name, file.getValue());
        problems.addAll(parsed.problems());
        unreadable.addAll(parsed.unreadable());
        documents.addAll(parsed.cards());
      } else if (Translations.holdsTexts(name)) {
        ParsedFile parsed = parser.apply(name, file.getValue());
        problems.addAll(parsed.problems());
        translated.addAll(parsed.cards());
      }
    }
    if (documents.size() > MOST_CARDS) {
      problems.add(
          new Problem(
              "too-many-cards",
              "(rule base)",
              0,
              0,
              "there are more than " + MOST_CARDS + " cards",
              "Give the folders that hold the cards and nothing else."));
      documents.clear();
    }
    documents.forEach(document -> PlainText.check(document, problems));
    translated.forEach(document -> PlainText.check(document, problems));
    Edition edition = Edition.take(documents, language, problems);
    Translations texts = Translations.of(translated, documents, problems);
    texts.expect(language, problems);
    Layers layers = new Layers(KINDS, rules.values(), tables.values(), problems);
    List<CardFile.Document> cards = texts.in(language, layers.apply(documents));
    SortedMap<String, String> placeless = new TreeMap<>();
    files.forEach((name, text) -> placeless.put(Layers.placeless(name, documents), text));
    Safeguards safeguards = layers.protection().of(cards);
    RuleBase base =
        ruleBase(
            fingerprint(placeless),
            edition,
            cards,
            rules,
            tables,
            layers.addOns(
                Stream.concat(rules.keySet().stream(), tables.keySet().stream()).toList()),
            () -> safeguards);
    if (problems.size() <= MOST_PROBLEMS) {
      new CrossCheck(base, places, problems).run();
      new AddedRepairs(base, places).check();
      new EffectCheck(base, places, problems).run();
    }
    Consequences.remove(problems, unreadable);
    return base;
  }

  /** The rule base from cards that the build has already checked, without checking them again. */
  static RuleBase checked(
      String fingerprint,
      List<CardFile.Document> cards,
      SortedMap<String, String> rules,
      SortedMap<String, String> tables,
      Supplier<Safeguards> safeguards) {
    RuleBaseReader reader = new RuleBaseReader(Collections.emptySortedMap(), "");
    List<CardFile.Document> others = new ArrayList<>(cards);
    Edition edition = Edition.take(others, "", reader.problems);
    RuleBase base =
        reader.ruleBase(fingerprint, edition, others, rules, tables, List.of(), safeguards);
    if (!reader.problems.isEmpty()) {
      throw new KnowledgeException(reader.problems);
    }
    return base;
  }

  private RuleBase ruleBase(
      String fingerprint,
      Edition edition,
      List<CardFile.Document> cards,
      SortedMap<String, String> rules,
      SortedMap<String, String> tables,
      List<AddOn> addOns,
      Supplier<Safeguards> safeguards) {
    cards.stream().takeWhile(c -> problems.size() <= MOST_PROBLEMS).forEach(this::card);
    new CauseRows(causes, effects, checks, histories, repairs, places).place();
    Planning planning =
        plannings.isEmpty()
            ? new Planning("none", 1, 1, 240, 180, Map.of())
            : plannings.values().iterator().next();
    return new RuleBase(
        fingerprint,
        edition,
        Collections.unmodifiableMap(causes),
        Collections.unmodifiableMap(effects),
        Collections.unmodifiableMap(checks),
        Collections.unmodifiableMap(histories),
        Collections.unmodifiableMap(repairs),
        Collections.unmodifiableMap(setUps),
        Collections.unmodifiableMap(cautions),
        Collections.unmodifiableMap(stops),
        Collections.unmodifiableMap(siteQuestions),
        planning,
        telephone.read(),
        Collections.unmodifiableMap(mainsParts),
        Collections.unmodifiableSortedMap(rules),
        Collections.unmodifiableSortedMap(tables),
        addOns,
        safeguards);
  }

  /** Whether a file of this name holds cards. */
  static boolean holdsCards(String name) {
    return name.endsWith(".yaml") && !name.endsWith(".case.yaml") && !Translations.holdsTexts(name);
  }

  private void card(CardFile.Document document) {
    Fields fields = new Fields(document, "", document.root(), problems);
    List<String> names = fields.names();
    String kind = names.isEmpty() ? "" : names.get(0);
    if (!KINDS.contains(kind)) {
      fields.problem(
          kind,
          "unknown-card",
          "a card begins with its kind and id; found \"" + kind + "\"",
          Names.advice(kind, KINDS));
      broken(Names.nearest(kind, KINDS).orElse("card"), fields.text(kind, ""));
      return;
    }
    String id = fields.text(kind);
    if (id.isEmpty()) {
      return; // reported; other problems show once it has an id
    }
    if (!Names.isId(id)) {
      fields.notAnId(kind, id);
      broken(kind, id.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-"));
    }
    telephone.card(kind, id, fields);
    CardReader reader = new CardReader(fields, id);
    if (kind.equals("check") || kind.equals("repair")) {
      reader.mainsPart().ifPresent(part -> mainsParts.putIfAbsent(id, part));
    }
    switch (kind) {
      case "cause" -> add(causes, kind, reader.cause(), fields);
      case "effect" -> add(effects, kind, reader.effect(), fields);
      case "check" -> add(checks, kind, reader.check(), fields);
      case "complaint" -> add(checks, kind, reader.complaint(), fields);
      case "proof" -> add(checks, kind, reader.proof(), fields);
      case "history" -> add(histories, kind, reader.history(), fields);
      case "repair" -> add(repairs, kind, reader.repair(), fields);
      case "set-up" -> add(setUps, kind, reader.setUp(), fields);
      case "caution" -> add(cautions, kind, reader.caution(), fields);
      case "stop" -> add(stops, kind, reader.stop(), fields);
      case "site" -> add(siteQuestions, kind, reader.site(), fields);
      case "planning" -> add(plannings, kind, reader.planning(), fields);
      default -> {} // for the telephone only: read above
    }
    fields.finish();
    places.put(kind, id, fields);
  }

  /** Records a card that cannot be used but that others may refer to. */
  private void broken(String kind, String id) {
    if (!id.isEmpty()) {
      unreadable.add(kind + " " + id);
    }
  }

  private static <C extends Card> void add(
      Map<String, C> cards, String kind, C card, Fields fields) {
    if (cards.putIfAbsent(card.id(), card) != null) {
      fields.problem(
          kind,
          "duplicate-id",
          "\"" + card.id() + "\" is defined twice",
          "Give one of the two another id, or delete it.");
    }
  }

  /**
   * The fingerprint of these files. The version that the keeper counts is no content: a gate is the
   * same, and a case is judged the same, under either.
   */
  static String fingerprint(SortedMap<String, String> files) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      files.forEach(
          (name, text) -> {
            digest.update(name.getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
            digest.update(Edition.unversioned(name, text).getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
          });
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The position of each card, for problems that are found only when all cards are read. */
  static final class Places {
    private final Map<String, Fields> fields = new LinkedHashMap<>();

    void put(String kind, String id, Fields card) {
      fields.putIfAbsent(kind + " " + id, card);
    }

    Fields of(String kind, String id) {
      return fields.get(kind + " " + id);
    }
  }
}
