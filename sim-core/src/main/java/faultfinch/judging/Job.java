package faultfinch.judging;

/**
 * One drawn job.
 *
 * @param complaint as it would be without a mistake
 * @param kind of fault; jobs are drawn kind by kind
 * @param share of the population that it stands for; all jobs of a draw together are 1
 * @param number in its draw; with the seed of the draw it decides all chance of the job
 */
public record Job(Truth truth, Complaint complaint, String kind, double share, long number) {}
