import { z } from 'zod';
import * as people from './people.js';
import { get, post } from './route.js';

/** People, devices, equipment and dealers. */
export const shopRoutes = {
  registerPerson: post({
    path: '/api/people',
    tag: 'people',
    summary: 'Register a person by badge, with roles.',
    body: people.RegisterPerson,
    response: people.RegisteredCode,
  }),
  listPeople: get({
    path: '/api/people',
    tag: 'people',
    summary: 'List badges and roles.',
    response: z.array(people.PersonView),
  }),
  registerDevice: post({
    path: '/api/devices',
    tag: 'people',
    summary: 'Register a device on which facts are entered.',
    body: people.RegisterDevice,
    response: people.RegisteredCode,
  }),
  listDevices: get({
    path: '/api/devices',
    tag: 'people',
    summary: 'List devices.',
    response: z.array(people.DeviceView),
  }),
  registerEquipment: post({
    path: '/api/equipment',
    tag: 'equipment',
    summary: 'Register a gauge, gun, dispenser, scale or oven.',
    body: people.RegisterEquipment,
    response: people.RegisteredCode,
  }),
  listEquipment: get({
    path: '/api/equipment',
    tag: 'equipment',
    summary: 'List equipment.',
    response: z.array(people.EquipmentView),
  }),
  registerDealer: post({
    path: '/api/dealers',
    tag: 'dealers',
    summary: 'Register a dealer.',
    body: people.RegisterDealer,
    response: people.RegisteredCode,
  }),
  listDealers: get({
    path: '/api/dealers',
    tag: 'dealers',
    summary: 'List dealers.',
    response: z.array(people.DealerView),
  }),
} as const;
