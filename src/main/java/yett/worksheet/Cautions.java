package yett.worksheet;

/** Safety notes that several calculations share. */
public final class Cautions {
  /** For work with a hand or a tape near the chain. */
  public static final Note CHAIN =
      Note.warning(
          "Chain, sprocket and idlers draw in fingers, and the leaf can start without notice."
              + " Crushed or lost fingers. Measure and work on the chain only with mains and"
              + " batteries off, locked and proved dead.");

  /** For opening a chain. */
  public static final Note CHAIN_OPEN =
      Note.warning(
          "A chain is the leaf's only hold. A leaf on a slope runs off, a tight chain springs."
              + " Chock the leaf on both sides and slacken the tension nuts before a link is"
              + " opened.");

  /** For measuring on a leaf that moves. */
  public static final Note MOVING_LEAF =
      Note.warning(
          "The leaf crushes. Death between leaf and post has happened. One person at the stop"
              + " button; stand beside or behind the leaf, never in the opening.");

  /** For taking a leaf off its drive. */
  public static final Note RELEASE =
      Note.warning(
          "A released leaf on a slope runs by itself, and a leaf without sound end stops or guides"
              + " comes off its track. Crushing, death. See that stops and guides are sound, find"
              + " the downhill side, clear it of people, and chock the leaf before it is"
              + " released.");

  /** For measuring the force of the drive. */
  public static final Note NEVER_A_BODY =
      Note.warning(
          "The force may be higher than hoped. Broken bones. Test with a meter or a block, never"
              + " with a hand or a body.");

  private Cautions() {}
}
