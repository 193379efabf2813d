export { EmbeddedPostgresError, type EmbeddedErrorCode } from './embedded-error.js';
export { type Embedded, type EmbeddedOptions, startEmbedded } from './start-embedded.js';
