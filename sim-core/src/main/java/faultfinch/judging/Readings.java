package faultfinch.judging;

/** What is seen and told of a drawn board. */
interface Readings {

  /** What a look shows; the same however often it is made. */
  String shows(Job job, String look);

  /** What the owner says. */
  Complaint complaint(Job job);
}
