import { Body, Controller, Param } from '@nestjs/common';
import {
  routes,
  type EndRole,
  type GrantRole,
  type RegisterDevice as DeviceRequest,
  type RegisterPerson as PersonRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ChangeRoles } from './change-roles.js';
import { ListPeople } from './list-people.query.js';
import { RegisterDevice } from './register-device.js';
import { RegisterPerson } from './register-person.js';

@Controller()
export class PeopleController {
  constructor(
    private readonly registerPerson: RegisterPerson,
    private readonly registerDevice: RegisterDevice,
    private readonly list: ListPeople,
    private readonly roles: ChangeRoles,
  ) {}

  @Route(routes.registerPerson)
  addPerson(@Body({ schema: routes.registerPerson.body }) request: PersonRequest) {
    return this.registerPerson.run(request);
  }

  @Route(routes.listPeople)
  people() {
    return this.list.people();
  }

  @Route(routes.grantRole)
  grantRole(@Param('badge') badge: string, @Body({ schema: routes.grantRole.body }) request: GrantRole) {
    return this.roles.grant(badge, request);
  }

  @Route(routes.endRole)
  endRole(@Param('badge') badge: string, @Body({ schema: routes.endRole.body }) request: EndRole) {
    return this.roles.end(badge, request);
  }

  @Route(routes.registerDevice)
  addDevice(@Body({ schema: routes.registerDevice.body }) request: DeviceRequest) {
    return this.registerDevice.run(request);
  }

  @Route(routes.listDevices)
  devices() {
    return this.list.devices();
  }
}
