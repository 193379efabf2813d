import { z } from 'zod';
import { PageQuery } from './envelope.js';
import * as guns from './guns.js';
import { get, post } from './route.js';

/** Guns, what they lost, and checks of equipment. */
export const gunRoutes = {
  hookUpGun: post({
    path: '/api/guns/:gun/hook-ups',
    tag: 'equipment',
    summary: 'Hook a lot or tank up to a gun, or unhook it.',
    body: guns.HookUpGun,
    response: guns.HookUpReceipt,
  }),
  setGun: post({
    path: '/api/guns/:gun/settings',
    tag: 'equipment',
    summary: 'Set how much catalyst a gun adds.',
    body: guns.SetGun,
    response: guns.GunSettingReceipt,
  }),
  readGun: get({
    path: '/api/guns/:gun',
    tag: 'equipment',
    summary: 'One gun: what fed it when, and how it was set.',
    response: guns.GunView,
  }),
  apportionDrop: post({
    path: '/api/drops',
    tag: 'layers',
    summary: 'Spread what a tank, drum or gun lost over the layers sprayed from it.',
    body: guns.ApportionDrop,
    response: guns.DropReceipt,
  }),
  checkEquipment: post({
    path: '/api/equipment/:code/checks',
    tag: 'equipment',
    summary: 'Record a check of equipment.',
    body: guns.CheckEquipment,
    response: guns.EquipmentCheckReceipt,
  }),
  listChecks: get({
    path: '/api/equipment/:code/checks',
    tag: 'equipment',
    summary: 'Checks of equipment, the newest first.',
    response: z.array(guns.EquipmentCheckView),
  }),
  listSuspects: get({
    path: '/api/equipment/:code/suspects',
    tag: 'equipment',
    summary: 'What was read or sprayed with equipment while it may have been unfit.',
    query: PageQuery,
    response: guns.SuspectPage,
  }),
  emptyTank: post({
    path: '/api/tanks/:tank/emptyings',
    tag: 'tanks',
    summary: 'Record that a tank was emptied, and cleaned or not.',
    body: guns.EmptyTank,
    response: guns.TankEmptiedReceipt,
  }),
} as const;
