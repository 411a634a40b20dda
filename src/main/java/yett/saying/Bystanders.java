package yett.saying;

import java.util.regex.Pattern;

/**
 * Takes out of a clause who or what is only there. "The hedge is on fire" and "the hedge rubs on
 * it" are near in meaning because both are about a hedge; a danger has to be told by what happens.
 */
final class Bystanders {
  private static final String KIN =
      "husband|wife|partner|boyfriend|girlfriend|mother|father|mum|mummy|mom|dad|daddy|son|daughter"
          + "|brother|sister|grandson|granddaughter|grandma|grandad|uncle|aunt|neighbours?|friend"
          + "|colleague|boss|foreman|caretaker|postman|gardener|plumber|electrician|builders?"
          + "|tenants?|guests?|visitors?|drivers?|customers?|lodger|manager|cleaner|milkman|dogs?|cats?";

  private static final String THINGS =
      "bicycles?|bikes?|trailers?|caravans?|wheelbarrows?|bins?|skips?"
          + "|hedges?|bush(?:es)?|trees?|branch(?:es)?|ivy|shrubs?|plants?|flower ?pots?|pots?|bench"
          + "|balls?|toys?|bags?|ladders?|boxes|pallets?|parcels?|fence";

  private static final String WHOSE =
      "(?:(?:my|our|your|his|her|their|the|an?|some|this|that|one of the) )?(?:(?:old|new|little|big) )?";

  private static final Pattern SOMEBODY = Pattern.compile("(?i)\\b" + WHOSE + "(?:" + KIN + ")\\b");
  private static final Pattern SOMETHING =
      Pattern.compile("(?i)\\b" + WHOSE + "(?:" + THINGS + ")\\b");

  private static final String SUBJECT =
      "(?:somebody|something|"
          + WHOSE
          + "(?:man|woman|people|lad|chap|lady|kids|children|cars?|vans?|lorry|lorries|trucks?))";

  private static final String IS = "(?: (?:is|are|was|were|just|now|also|still|only)|['’]s)*";

  /** Not "under", "in" or "between", where people and things are caught. */
  private static final String PLACE =
      "(?:(?:right |just )?(?:beside|next to|by|near|at|against|on|to|in front of|outside|behind"
          + "|close to|along|opposite) (?:the |our |my |a )?(?:gate|gatepost|fence|post|pillar|wall"
          + "|hedge|house|door|drive|road|pavement|phone|side|it|me|us|something|somebody)"
          + "|(?:not )?(?:here|there|home|at home|in|back|around)|with me|with us|outside|nearby"
          + "|out|away|at work|at school|asleep|in bed|shopping|on holiday)";

  /** Only of things: somebody who lies there may be hurt. */
  private static final String STANDS = "(?: (?:standing|waiting|stands|waits))?";

  private static final String LIES =
      "(?: (?:parked|standing|stands|leaning|leans|lying|lies|sitting|sits|chained|locked"
          + "|tied|propped|growing|grows|left|put))?";

  private static final Pattern ONLY_THERE =
      Pattern.compile(
          "(?i)(?:(?:and|but|well|so|yes|ok|now|oh|look) )*(?:(?:there|here|it)(?: is| are|['’]s|s)"
              + " )?(?:somebody"
              + IS
              + STANDS
              + "|"
              + SUBJECT.replace("somebody|", "")
              + IS
              + LIES
              + ")(?: "
              + PLACE
              + ")+(?: (?:now|too|as well|again|already))*");

  private Bystanders() {}

  /** Whether a clause says nothing but who or what is at a place: "my husband is here now". */
  static boolean areAllItSays(String clause) {
    String bare = without(clause.strip().replaceAll("[.!,]+$", ""));
    return ONLY_THERE.matcher(bare).matches();
  }

  /** The clause with "somebody" and "something" for them; the clause itself if it has none. */
  static String without(String clause) {
    String people = SOMEBODY.matcher(clause).replaceAll("somebody");
    return SOMETHING.matcher(people).replaceAll("something");
  }
}
