package yett.replay;

import org.junit.jupiter.api.Test;

class TryoutTest {
  @Test
  void go() {
    String text =
"""
case: slack
person: technician
site: {opening: 6 m}
complaints: [noisy-chain]
history: [cold-snap]
answers:
  danger-person: nobody
  noise-kind: slap
  display-lit: dark
  held-open: not-meant
  chain-sag: 190 mm
  battery-rest-voltage: 25.9 V
  charging-voltage: 27.4 V
truth: [chain-slack]
repairs: [tighten-chain]
""";
    CaseFile f = CaseFile.read("x.yaml", text, SmallRuleBase.base());
    System.out.println(f.problems());
    Replayed r = new Replayer(SmallRuleBase.expertise()).run(f.cases().get(0));
    System.out.println(ReplayJson.line(r));
    CaseFile g =
        CaseFile.read(
            "x.yaml",
            "case: a\ncse: b\nsite: {opning: 3, opening: 40 m, batteries: lead}\nanswers:\n  chain-sgg: 3\n  chain-sag: 12 furlongs\n  display-lit: drak\n  noise-kind: {a: 1}\n  held-open:\n  battery-rest-voltage: 100 V\n  charging-voltage: 3 mm\n  charging-voltage: 3 mm\ncomplaints: [noisy-chian]\n",
            SmallRuleBase.base());
    g.problems().forEach(System.out::println);
    g =
        CaseFile.read(
            "x.yaml",
            "case: a\ncse: b\nsite: {opning: 3, opening: 40 m, batteries: lead}\nanswers:\n  chain-sgg: 3\n  chain-sag: 12 furlongs\n  display-lit: drak\n  noise-kind: {a: 1}\n  held-open:\n  battery-rest-voltage: 100 V\n  charging-voltage: 3 mm\n  does-nothing: said\ncomplaints: [noisy-chian]\n",
            SmallRuleBase.base());
    g.problems().forEach(System.out::println);
    g =
        CaseFile.read(
            "x.json",
            "[\t{\"case\": \"a\",\n\t\"person\":\"caler\"}, {\"case\": 3}]",
            SmallRuleBase.base());
    g.problems().forEach(System.out::println);
    g = CaseFile.read("x.json", "[{\"case\": \"a\",,}", SmallRuleBase.base());
    g.problems().forEach(System.out::println);
    g = CaseFile.read("x.yaml", "# nothing\n", SmallRuleBase.base());
    g.problems().forEach(System.out::println);
    g = CaseFile.read("x.yaml", "just words", SmallRuleBase.base());
    g.problems().forEach(System.out::println);
    g = CaseFile.read("x.yaml", "case: a\nperson: [\n", SmallRuleBase.base());
    g.problems().forEach(System.out::println);
    g = CaseFile.read("x.yaml", "case: a\n\tperson: b\n", SmallRuleBase.base());
    g.problems().forEach(System.out::println);
  }
}
