import { z } from 'zod';
import { ROLES, type Role } from './access/role-names.js';
import { Code, Envelope, Instant, Text, receipt } from './envelope.js';

export { ROLES, type Role };

export const RegisterPerson = Envelope.extend({
  badge: Code,
  name: Text.describe('kept apart from the record, which knows the badge alone'),
  roles: z.array(z.enum(ROLES)).min(1),
  dealer: Code.optional().describe('the dealer for whom a person with the role dealer looks; for that role alone'),
}).meta({ id: 'RegisterPerson' });
export type RegisterPerson = z.output<typeof RegisterPerson>;

export const RegisterDevice = Envelope.extend({
  code: Code,
  description: Text,
  ratedForClassifiedArea: z
    .boolean()
    .describe(
      'a device that is not rated for it stays outside any area classified for electrical equipment (NFPA 33, local authority)',
    ),
}).meta({ id: 'RegisterDevice' });
export type RegisterDevice = z.output<typeof RegisterDevice>;

export const RegisterEquipment = Envelope.extend({
  code: Code,
  kind: z.enum(['gauge', 'gun', 'dispenser', 'scale', 'oven']),
  description: Text,
}).meta({ id: 'RegisterEquipment' });
export type RegisterEquipment = z.output<typeof RegisterEquipment>;

export const RegisterDealer = Envelope.extend({ code: Code, name: Text, place: Text }).meta({ id: 'RegisterDealer' });
export type RegisterDealer = z.output<typeof RegisterDealer>;

export const RegisteredCode = receipt('RegisteredCode', z.object({ code: z.string() }));
export type RegisteredCode = z.output<typeof RegisteredCode>;

export const PersonView = z
  .object({ id: z.uuid(), badge: z.string(), roles: z.array(z.string()) })
  .meta({ id: 'PersonView' });
export const DeviceView = z
  .object({
    id: z.uuid(),
    code: z.string(),
    description: z.string(),
    ratedForClassifiedArea: z.boolean(),
    enrolled: z.boolean(),
  })
  .meta({ id: 'DeviceView' });
export type DeviceView = z.output<typeof DeviceView>;
const LastCheck = z.object({ what: z.string(), good: z.boolean(), happenedAt: Instant }).nullable();
export const EquipmentView = z
  .object({
    id: z.uuid(),
    code: z.string(),
    kind: z.string(),
    description: z.string(),
    lastCheck: LastCheck.describe('null: it was never checked'),
    lastGood: LastCheck.describe('the newest check that found it fit'),
  })
  .meta({ id: 'EquipmentView' });
export const DealerView = z
  .object({ id: z.uuid(), code: z.string(), name: z.string(), place: z.string() })
  .meta({ id: 'DealerView' });
