package faultfinch.desk;

/**
 * A board as it stands: words are read by what it can show so.
 *
 * @param suffix what stands behind its looks; nothing behind those of the complete board
 */
record Stand(Lookbook lookbook, Phrases phrases, String suffix) {
  boolean isLeads() {
    return suffix.equals(RoundWithLeads.SUFFIX);
  }
}
