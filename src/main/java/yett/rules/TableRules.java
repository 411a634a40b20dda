package yett.rules;

/** The rules that conclude from rows of tables: one for each kind of row, whatever the row says. */
final class TableRules {
  /** Package of the rules for rows, which are not in a file of a rule base. */
  static final String PACKAGE = "yett.rules.tables";

  static final String TEXT =
      """
      package yett.rules.tables

      import java.util.Set
      import yett.rules.Conclusion.Contradiction
      import yett.rules.Conclusion.Odds
      import yett.rules.Fact
      import yett.rules.Fact.Given
      import yett.rules.Row.Exclusion
      import yett.rules.Row.MovedOdds
      import yett.rules.Row.UsualRange

      rule "a row of a table gives a usual range"
      when
        $row : UsualRange()
        Set($row.speaks(this)) from accumulate(Fact($row.concerns(this), $fact : this), collectSet($fact))
      then
        insertLogical($row.expectation());
      end

      rule "a row of a table moves the odds"
      when
        $row : MovedOdds()
        Set($row.speaks(this)) from accumulate(Fact($row.concerns(this), $fact : this), collectSet($fact))
        $odds : Odds() from $row.odds()
      then
        insertLogical($odds);
      end

      rule "a row of a table names two answers that cannot both be right"
      when
        $row : Exclusion()
        Set($row.speaks(this)) from accumulate(Fact($row.concerns(this), $fact : this), collectSet($fact))
        $one : Given($row.one(this), $epoch : epoch)
        $other : Given(epoch == $epoch, $row.other(this))
      then
        insertLogical(Contradiction.between($one, $other, $row.reason()));
      end
      """;

  private TableRules() {}
}
