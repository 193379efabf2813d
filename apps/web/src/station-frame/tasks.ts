import type { Role } from '@hull-record/contracts';
import type { Key } from '../language/catalogue.js';

/** A text of a task; it takes no values. */
type TaskText = Extract<Key, `station.task.${string}`>;

/** A task that people at the station choose from its start: where it is, what it is called, and whose it is. */
export interface StationTask {
  readonly to: string;
  readonly name: TaskText;
  readonly help: TaskText;
  /** Who does it; the start shows others what they may do first. */
  readonly roles: readonly Role[];
}

/** The tasks of the station, in the order in which its start shows them. A new one is one more line here. */
export const STATION_TASKS: readonly StationTask[] = [
  {
    to: '/station/layer',
    name: 'station.task.layer',
    help: 'station.task.layerHelp',
    roles: ['laminator', 'shift lead'],
  },
  {
    to: '/station/readings',
    name: 'station.task.readings',
    help: 'station.task.readingsHelp',
    roles: ['laminator', 'shift lead', 'inspector', 'quality'],
  },
  { to: '/station/sign', name: 'station.task.sign', help: 'station.task.signHelp', roles: ['inspector', 'quality'] },
  {
    to: '/station/bay',
    name: 'station.task.bay',
    help: 'station.task.bayHelp',
    roles: ['receiving', 'laminator', 'shift lead', 'inspector', 'patcher', 'quality', 'warranty'],
  },
  {
    to: '/station/confirm',
    name: 'station.task.confirm',
    help: 'station.task.confirmHelp',
    roles: ['receiving', 'laminator', 'shift lead', 'inspector', 'patcher', 'quality', 'warranty'],
  },
];
