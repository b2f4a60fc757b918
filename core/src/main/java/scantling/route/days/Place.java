package scantling.route.days;

import scantling.route.Operation;

/**
 * Where a task of the network comes from.
 *
 * @param job index of the job
 * @param operation what is done
 * @param begun whether it goes on already
 * @param held whether nothing is left of it but what it still takes up: glue that is setting
 */
record Place(int job, Operation operation, boolean begun, boolean held) {}
