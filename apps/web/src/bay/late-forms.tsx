import { lazy } from 'react';

/** The two heavy forms of the bay: the frame of their page, with the part, is on the screen before them. */
export const LateRepairForm = lazy(async () => ({ default: (await import('./repair/repair-form.js')).RepairForm }));
export const LateDefectForm = lazy(async () => ({ default: (await import('./defect/defect-form.js')).DefectForm }));
