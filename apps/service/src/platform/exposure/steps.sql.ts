/** A step below 0, so long or longer is kept as this byte and then four, the highest first. */
export const LONG_STEP = 255;

const LONG = `'\\x${LONG_STEP.toString(16)}'::bytea`;

/** SQL: the bytes of a step from one integer to the next. */
export const bytesOfStep = (step: string): string =>
  `case when ${step} >= 0 and ${step} < ${LONG_STEP} then substring(int4send(${step}) from 4) else ${LONG} || int4send(${step}) end`;
