package yett.casebook;

/** Whether anything remains to be done on a case. */
public enum CaseStatus {
  OPEN,
  CLOSED
}
