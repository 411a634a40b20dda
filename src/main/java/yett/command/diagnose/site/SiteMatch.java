package yett.command.diagnose.site;

import yett.knowledge.SiteQuestion;

/** How well some words fit an answer about the gate. */
record SiteMatch(SiteQuestion question, String answer, int score) {}
