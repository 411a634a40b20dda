package yett.rules;

import java.util.List;
import yett.calculation.Range;

/**
 * Something that a rule concluded. Truth maintenance withdraws it when its grounds no longer hold.
 */
public sealed interface Conclusion {

  Reason reason();

  /** The card or the answers that the conclusion is about; conclusions are sorted by it. */
  String about();

  /**
   * The usual range of a reading on this gate, in the canonical unit.
   *
   * @param how where the range comes from, in words with the numbers used
   */
  record Expectation(String check, double low, double high, String how, Reason reason)
      implements Conclusion {
    public Expectation(String check, Range range, String how, Reason reason) {
      this(check, range.low(), range.high(), how, reason);
    }

    @Override
    public String about() {
      return check;
    }

    /** Hashes one component only: the generated hashCode of a record is slow at every start. */
    @Override
    public int hashCode() {
      return check.hashCode();
    }
  }

  /**
   * The meaning of an answer.
   *
   * @param weights for each outcome of the check, the chance of this answer if that outcome were
   *     true
   * @param outcome the most likely outcome; of several that are true at once, the one furthest down
   *     the card
   * @param also the others, in the order of the card
   */
  record Finding(
      String check,
      long event,
      int epoch,
      List<Double> weights,
      String outcome,
      List<String> also,
      Reason reason)
      implements Conclusion {
    /** The meaning of an answer with a single outcome. */
    public Finding(
        String check, long event, int epoch, List<Double> weights, String outcome, Reason reason) {
      this(check, event, epoch, weights, outcome, List.of(), reason);
    }

    @Override
    public String about() {
      return check + " " + event;
    }
  }

  /** A factor on the odds of a cause; 0 rules the cause out. */
  record Odds(String cause, double factor, Reason reason) implements Conclusion {
    @Override
    public String about() {
      return cause;
    }
  }

  /** Two answers that cannot both be right, in the order of their events. */
  record Contradiction(long first, long second, Reason reason) implements Conclusion {
    /** A contradiction between two answers, whichever was given first. */
    public static Contradiction between(Fact.Given one, Fact.Given other, Reason reason) {
      return new Contradiction(
          Math.min(one.event(), other.event()), Math.max(one.event(), other.event()), reason);
    }

    @Override
    public String about() {
      return first + " " + second;
    }
  }

  /**
   * A stop card applies.
   *
   * @param event number of the answer that reports the danger; 0 if it does not depend on an answer
   */
  record StopNow(String stop, long event, Reason reason) implements Conclusion {
    public StopNow(String stop, Reason reason) {
      this(stop, 0, reason);
    }

    @Override
    public String about() {
      return stop;
    }
  }

  /** A set-up that nobody may enter now; nothing that needs it is done. */
  record Forbidden(String setUp, Reason reason) implements Conclusion {
    @Override
    public String about() {
      return setUp;
    }
  }

  /**
   * A deed ({@link yett.knowledge.Stop#DEEDS}) that one danger would call for but another danger
   * forbids.
   */
  record Withheld(String deed, Reason reason) implements Conclusion {
    @Override
    public String about() {
      return deed;
    }
  }

  /** A check, repair or proof that may not or cannot be done here. */
  record Unavailable(String card, Reason reason) implements Conclusion {
    @Override
    public String about() {
      return card;
    }
  }

  /**
   * A look whose ordinary answer would deny what was reported, such as "as fast as ever" of a gate
   * that was reported slow. It is answered in words; a line that leaves it out does not answer it.
   */
  record Unassumed(String check, Reason reason) implements Conclusion {
    @Override
    public String about() {
      return check;
    }
  }

  /**
   * A check that makes no sense at the gate as it was between two repairs, such as the speed of a
   * leaf that does not move. It is not asked, and an answer to it does not count.
   */
  record Senseless(String check, int epoch, Reason reason) implements Conclusion {
    @Override
    public String about() {
      return check + " " + epoch;
    }
  }

  /**
   * Follow-up work that is still to be done: a check or repair that a repair made necessary. What a
   * recent event makes necessary comes before anything runs the gate.
   *
   * @param repair the repair, or the recent event, that makes it necessary
   */
  record FollowUp(String repair, String card, Reason reason) implements Conclusion {
    @Override
    public String about() {
      return repair + " " + card;
    }
  }

  /**
   * How the gate stands until somebody comes, as far as it was told.
   *
   * @param words such as "stands open"
   */
  record Stands(String words, Reason reason) implements Conclusion {
    @Override
    public String about() {
      return words;
    }
  }

  /**
   * Something worth telling the person.
   *
   * @param due whether it is work that is left to do, so that the pages to hand out have it too
   */
  record Remark(String text, boolean due, Reason reason) implements Conclusion {
    /** A remark that is for the person at work only. */
    public Remark(String text, Reason reason) {
      this(text, false, reason);
    }

    /** Work that is left to do after this visit. */
    public static Remark due(String text, Reason reason) {
      return new Remark(text, true, reason);
    }

    @Override
    public String about() {
      return text;
    }
  }
}
