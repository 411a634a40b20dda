package yett.rules;

import java.util.List;
import yett.calculation.Range;

/** What a rule concluded; withdrawn by truth maintenance when its grounds go. */
public sealed interface Conclusion {

  Reason reason();

  /** The card, or the answers, that this is about: conclusions are put in order by it. */
  String about();

  /**
   * The usual range of a reading on this gate, canonical unit.
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

    /** As good as one of all parts, which Java would put together at every start. */
    @Override
    public int hashCode() {
      return check.hashCode();
    }
  }

  /**
   * What an answer was taken to mean.
   *
   * @param weights for each outcome of the check, the chance of this answer if that were true
   * @param outcome the outcome that it most likely is
   */
  record Finding(
      String check, long event, int epoch, List<Double> weights, String outcome, Reason reason)
      implements Conclusion {
    @Override
    public String about() {
      return check + " " + event;
    }
  }

  /** The odds of a cause are multiplied; a factor of 0 rules it out. */
  record Odds(String cause, double factor, Reason reason) implements Conclusion {
    @Override
    public String about() {
      return cause;
    }
  }

  /** Two answers that cannot both be right; events in the order given. */
  record Contradiction(long first, long second, Reason reason) implements Conclusion {
    /** Between two answers, whichever was given first. */
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
   * @param event number of the answer that says so; 0 if it does not hang on one
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

  /** A state of the work that nobody may bring about now, and so nothing that needs it. */
  record Forbidden(String setUp, Reason reason) implements Conclusion {
    @Override
    public String about() {
      return setUp;
    }
  }

  /**
   * Nobody is told to do this ({@link yett.knowledge.Stop#DEEDS}) on account of one danger, because
   * of another.
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
   * A check that has no sense at the gate as it stood between two repairs, such as the speed of a
   * leaf that does not move: it is not asked, and an answer to it is not counted.
   */
  record Senseless(String check, int epoch, Reason reason) implements Conclusion {
    @Override
    public String about() {
      return check + " " + epoch;
    }
  }

  /** A check or repair that a repair made necessary and that is still to be done. */
  record FollowUp(String repair, String card, Reason reason) implements Conclusion {
    @Override
    public String about() {
      return repair + " " + card;
    }
  }

  /** Something worth saying to the person. */
  record Remark(String text, Reason reason) implements Conclusion {
    @Override
    public String about() {
      return text;
    }
  }
}
