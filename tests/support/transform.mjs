import { createHash } from 'node:crypto';
import swcJest from '@swc/jest';
import { applyFault } from '../faults/planted.mjs';

const swc = (swcJest.default ?? swcJest).createTransformer();

/** Compiles TypeScript, after planting the fault that FAULT names (see tests/faults); with none it only compiles. */
export default {
  ...swc,
  canInstrument: false,
  process: (source, path, options) => swc.process(applyFault(source, path), path, options),
  processAsync: (source, path, options) => swc.processAsync(applyFault(source, path), path, options),
  getCacheKey: (source, path, options) =>
    createHash('sha256')
      .update(swc.getCacheKey(source, path, options))
      .update(process.env.FAULT ?? '')
      .digest('hex'),
};
