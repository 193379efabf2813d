/** SQL: more memory, for this transaction alone: with the usual few megabytes what reads a whole plant sorts on the disk. */
export const MEMORY = "select set_config('work_mem', '256MB', true)";
