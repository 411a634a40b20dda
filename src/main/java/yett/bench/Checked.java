package yett.bench;

import java.util.List;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;

/**
 * What a look at a rule base found.
 *
 * @param base as far as it can be read
 * @param problems of cards, rules' names and cases, by file and line
 * @param cases how many sound cases stand beside the cards
 */
public record Checked(RuleBase base, List<Problem> problems, int cases) {}
