/** What the figures of a trace rest on. */
export const ASSUMES = 'Assumes well-mixed tanks. What is under 1e-9 of what it went into is left out.';
