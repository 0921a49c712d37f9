package holloway.check;

/** One thing a plan must be true to. */
interface Rule {
  void judge(Evidence evidence, Charge charge);
}
