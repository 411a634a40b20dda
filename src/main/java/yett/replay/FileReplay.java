package yett.replay;

import java.util.List;
import yett.knowledge.Problem;

/**
 * The results of one case file.
 *
 * @param cases results in the order of the file
 * @param problems why there are none, or fewer; empty if all went well
 */
public record FileReplay(String file, List<Replayed> cases, List<Problem> problems) {}
